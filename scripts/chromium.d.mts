/** The browser for the tests: the named one, an installed one, or Debian's package where we may install it. */
export declare function findChromium(): string | undefined;
