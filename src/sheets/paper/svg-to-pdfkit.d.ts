/** Draws a picture into a document of the PDF library; it brings no types of its own. */
declare function drawSvg(document: object, svg: string, x: number, y: number, options: object): void;
export = drawSvg;
