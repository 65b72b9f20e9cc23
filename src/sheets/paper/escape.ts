/** A text as it stands in HTML, in an attribute too. */
export function escapeHtml(text: string): string {
  return text.replace(/[&<>"']/g, (sign) => SIGNS[sign] ?? sign);
}

const SIGNS: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;", "'": "&#39;" };
