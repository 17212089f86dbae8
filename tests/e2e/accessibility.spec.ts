import AxeBuilder from "@axe-core/playwright";
import { type Page, test as plain } from "@playwright/test";
import { box, expect, openForm, test } from "#tests/e2e/page.ts";

/** Every page, with one invented motor and one invented stern; the first of each drawer. */
async function pagesToSee(page: Page): Promise<string[]> {
  const first = async (kind: string) => {
    const records: { id: string }[] = await (
      await page.request.get(`/api/${kind}s/export?format=json`)
    ).json();
    return records[0]!.id;
  };
  const [motor, stern] = [await first("motor"), await first("stern")];
  return [
    "/",
    "/motors",
    "/motors/new",
    `/motors/${motor}`,
    `/motors/${motor}/edit`,
    `/motors/${motor}/history`,
    "/motors/exchange",
    "/sterns",
    "/sterns/new",
    `/sterns/${stern}`,
    `/sterns/${stern}/edit`,
    `/sterns/${stern}/history`,
    "/sterns/exchange",
    "/checks",
    "/measuring",
    `/fit/${stern}/${motor}`,
    `/shortlist/${stern}`,
    `/motors/${motor}/sterns`,
    `/shaft/${stern}`,
    `/cut-plan/${stern}?motors=${motor}`,
    "/sale",
  ];
}

/** What axe finds on the page, each with where it found it. */
async function violations(page: Page): Promise<string[]> {
  const found = await new AxeBuilder({ page })
    .withTags(["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"])
    .analyze();
  return found.violations.map(
    ({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 120)).join(" | ")}`,
  );
}

/** Whether anything pushes the page wider than the window. */
const overflows = (page: Page): Promise<boolean> =>
  page.evaluate(() => document.documentElement.scrollWidth > window.innerWidth);

for (const theme of ["light", "dark"] as const) {
  test(`every page is sound to axe in the ${theme} theme, 320 px wide`, async ({ page }) => {
    test.setTimeout(240_000);
    await page.emulateMedia({ colorScheme: theme });
    await page.setViewportSize({ width: 320, height: 700 });
    for (const path of await pagesToSee(page)) {
      await test.step(path, async () => {
        await page.goto(path);
        expect(await violations(page), path).toEqual([]);
        expect(await overflows(page), `${path} is no wider than the window`).toBe(false);
      });
    }
  });
}

test("every page keeps its width with text twice as large", async ({ page }) => {
  test.setTimeout(240_000);
  await page.setViewportSize({ width: 1280, height: 900 });
  for (const path of await pagesToSee(page)) {
    await page.goto(path);
    await page.addStyleTag({ content: "html { font-size: 200% }" });
    expect(await overflows(page), path).toBe(false);
  }
});

test("everything that can be pressed on a form is at least 24 px each way", async ({ page }) => {
  await page.setViewportSize({ width: 360, height: 740 });
  await openForm(page, "/sterns/new");
  await box(page, "Transom thickness").fill("40 mm");
  const small = await page
    .locator("button, input:not([type=hidden]), select, textarea, label.choice, summary")
    .evaluateAll(
      (all) =>
        all
          .filter((each) => each.checkVisibility() && !each.closest("label.choice input"))
          .map((each) => (each.closest("label.choice") ?? each).getBoundingClientRect())
          .filter(({ width, height }) => width < 24 || height < 24).length,
    );
  expect(small).toBe(0);
});

test("the theme switch turns the sheet over and is remembered", async ({ page }) => {
  await page.emulateMedia({ colorScheme: "light" });
  await page.goto("/checks");
  const background = () => page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor);
  const day = await background();
  await page.getByRole("button", { name: "Switch between light and dark sheet" }).click();
  await expect(page.locator("html")).toHaveAttribute("data-theme", "dark");
  const night = await background();
  expect(night).not.toBe(day);
  await page.reload();
  expect(await background()).toBe(night);
});

test("a form can be filled in and saved from the keyboard alone", async ({ page }) => {
  await openForm(page, "/motors/new");
  await page.keyboard.press("Tab");
  await expect(page.getByRole("link", { name: "Skip to the sheet" })).toBeFocused();
  await page.keyboard.press("Enter");
  await page.keyboard.press("Tab");
  await expect(box(page, "Label")).toBeFocused();
  await page.keyboard.type("From the keyboard");
  await box(page, "Shaft length").focus();
  await page.keyboard.type("20 1/2");
  await page.getByRole("button", { name: /20\.5 in/ }).focus();
  await page.keyboard.press("Enter");
  await expect(page.getByText("520.7 mm = 20 1/2 in")).toBeVisible();
  await box(page, "Label").focus();
  await page.keyboard.press("Enter");
  await expect(page.getByRole("heading", { level: 1, name: "From the keyboard" })).toBeVisible();
});

plain("an address where nothing is kept says so, and is sound to axe", async ({ page }) => {
  const answer = await page.goto("/motors/no-such-motor");
  expect(answer?.status()).toBe(404);
  await expect(page.getByRole("heading", { level: 1, name: "No such sheet in the drawer" })).toBeVisible();
  expect(await violations(page)).toEqual([]);
});
