/** The few functions of the PDF library that are used; its own types would bring Node's into this folder. */
interface StructureElement {
  add(child: StructureElement | (() => void)): StructureElement;
  end(): void;
}
declare class PDFDocument {
  constructor(options: object);
  readonly page: { readonly width: number; readonly height: number };
  on(event: "data", take: (chunk: Uint8Array) => void): void;
  on(event: "end", done: () => void): void;
  registerFont(name: string, bytes: Uint8Array): void;
  font(name: string): PDFDocument;
  fontSize(size: number): PDFDocument;
  fillColor(colour: string): PDFDocument;
  widthOfString(text: string): number;
  text(text: string, x: number, y: number, options: object): PDFDocument;
  rect(x: number, y: number, width: number, height: number): PDFDocument;
  moveTo(x: number, y: number): PDFDocument;
  lineTo(x: number, y: number): PDFDocument;
  lineWidth(width: number): PDFDocument;
  stroke(colour: string): PDFDocument;
  fill(colour: string): PDFDocument;
  addPage(): PDFDocument;
  struct(type: string, options: object): StructureElement;
  addStructure(element: StructureElement): void;
  markContent(tag: string, options?: object): void;
  endMarkedContent(): void;
  end(): void;
}
export = PDFDocument;
