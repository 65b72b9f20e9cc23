const MONTHS = [
  "January",
  "February",
  "March",
  "April",
  "May",
  "June",
  "July",
  "August",
  "September",
  "October",
  "November",
  "December",
];

/** "2026-03-16" as "16 March 2026"; what is no such date stays as it is. */
export function sayDate(date: string): string {
  const [, year, month, day] = /^(\d{4})-(\d{2})-(\d{2})$/.exec(date) ?? [];
  const name = MONTHS[Number(month) - 1];
  return name === undefined ? date : `${Number(day)} ${name} ${year}`;
}
