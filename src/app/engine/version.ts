/** Product and knowledge an answer was made with; the knowledge number rises with every change of a table or a model. */
export const VERSION = { product: "0.1.0", knowledge: "2026-11" } as const;
