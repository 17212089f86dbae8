/** A theme the reader chose; absent, the sheet follows the reader's system. */
export type Theme = "light" | "dark";

/** The theme a cookie's text stands for; anything else is no choice. */
export function themeFrom(text: string | undefined): Theme | undefined {
  return text === "light" || text === "dark" ? text : undefined;
}

/** The cookie that remembers a theme for a year. */
export function themeCookie(theme: Theme): string {
  return `theme=${theme}; Path=/; Max-Age=31536000; SameSite=Lax`;
}
