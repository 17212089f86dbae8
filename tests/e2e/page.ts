import { test as base, expect, type Locator, type Page } from "@playwright/test";

/** A page that fails its test when the browser's console, or the page itself, complains. */
export const test = base.extend({
  page: async ({ page }, use) => {
    const complaints: string[] = [];
    page.on("console", (line) => {
      if (line.type() === "error" || line.type() === "warning") complaints.push(line.text());
    });
    page.on("pageerror", (error) => complaints.push(error.message));
    await use(page);
    expect(complaints, "the console stays silent").toEqual([]);
  },
});

export { expect };

/** The box of a number, by its name in the measuring guide. */
export const box = (page: Page, name: string): Locator => page.getByRole("textbox", { name, exact: true });

/** Goes to a form and waits until it answers to typing. */
export async function openForm(page: Page, path: string): Promise<void> {
  await page.goto(path);
  await expect(page.getByRole("form")).toBeVisible();
  // The echo under a box is the browser's own work: once it appears, the form is alive.
  const first = page.getByRole("textbox", { name: "Label", exact: true });
  await expect(first).toBeVisible();
  await page.waitForFunction(() => {
    const input = document.getElementById("label");
    return input !== null && Object.keys(input).some((key) => key.startsWith("__reactProps"));
  });
}

/** A label nobody else's test uses. */
export const freshLabel = (words: string): string => `${words} ${Date.now().toString(36)}`;
