import { expect, test } from "#tests/e2e/page.ts";

const STERN = "vee-runabout-long-well";

test.describe("A buyer's shortlist", () => {
  test("puts the motors that fit first, with their room to spare in words", async ({ page }) => {
    await page.goto(`/shortlist/${STERN}`);
    await expect(page.getByText(/[1-9]\d* fit, [1-9]\d* cannot be told yet, [1-9]\d* foul/)).toBeVisible();
    const rows = page.locator("ol > li");
    await expect(rows.first()).toContainText("Fits");
    await expect(rows.first()).toContainText(/to spare/);
    const verdicts = await rows.evaluateAll((all) =>
      all.map((row) => (/Fits|Fouls|Cannot tell/.exec(row.textContent ?? "") ?? [""])[0]),
    );
    const order = ["Fits", "Cannot tell", "Fouls"];
    const places = verdicts.map((verdict) => order.indexOf(verdict));
    expect(places).toEqual(places.toSorted((a, b) => a - b));
    // The list may go on over the page: what stands on the first one is in order, and of more than one kind.
    expect(new Set(places).size).toBeGreaterThan(1);
  });

  test("is narrowed in its address, and says so when nothing is left", async ({ page }) => {
    await page.goto(`/shortlist/${STERN}?shaftClass=short`);
    await expect(page.getByText(/chosen out of/)).toBeVisible();
    await expect(page.getByLabel("Shaft", { exact: true })).toHaveValue("short");
    await page.getByLabel("Show", { exact: true }).selectOption({ label: "Those that fit" });
    await expect(page).toHaveURL(/show=fits/);
    // No short shaft suits a seat made for long ones.
    await expect(page.getByText(/one of those that fit/)).toBeVisible();
    await page.getByRole("link", { name: "Show all" }).click();
    await expect(page.locator("ol > li").first()).toContainText("Fits");
  });

  test("tells every question of a row on demand, and leads to its report", async ({ page }) => {
    await page.goto(`/shortlist/${STERN}`);
    const first = page.locator("ol > li").first();
    await first.getByText("Every question").click();
    await expect(first.getByText("clamp opening")).toBeVisible();
    await first.getByRole("link", { name: "The whole report, with drawings" }).click();
    await expect(page).toHaveURL(new RegExp(`/fit/${STERN}/`));
  });

  test("marks what rests on like motors when gaps are filled", async ({ page }) => {
    await page.goto(`/shortlist/${STERN}?like=1`);
    await expect(page.getByText("Gaps filled.")).toBeVisible();
    await expect(
      page
        .locator("ol")
        .getByText(/\d+ from like motors/)
        .first(),
    ).toBeVisible();
  });

  test("compares the ticked motors side by side, differences only on request", async ({ page }) => {
    await page.goto(`/shortlist/${STERN}`);
    const ticks = page.getByRole("checkbox");
    await ticks.nth(0).check();
    await ticks.nth(1).check();
    await page.getByRole("button", { name: "Compare those ticked" }).click();
    await expect(page).toHaveURL(new RegExp(`/compare/${STERN}\\?`));
    await expect(page.getByRole("columnheader")).toHaveCount(2);
    const lines = await page.getByRole("row").count();
    await page.getByRole("link", { name: "Differences only" }).click();
    await expect(page).toHaveURL(/differences=1/);
    await expect.poll(() => page.getByRole("row").count()).toBeLessThan(lines);
    await expect(page.getByRole("img", { name: /motors as they run/i })).toBeVisible();
  });

  test("asks for two to four when fewer were ticked", async ({ page }) => {
    await page.goto(`/compare/${STERN}?motors=15-hp-long-tiller-four-stroke`);
    await expect(page.getByText("Only one motor is chosen")).toBeVisible();
  });

  test("goes out as a table with every motor", async ({ page }) => {
    await page.goto(`/shortlist/${STERN}`);
    const [file] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("link", { name: "Export as CSV" }).click(),
    ]);
    expect(file.suggestedFilename()).toBe(`motors-for-${STERN}.csv`);
  });

  test("is the same the other way round: the sterns of a motor", async ({ page }) => {
    await page.goto("/motors/15-hp-long-tiller-four-stroke/sterns");
    await expect(page.locator("ol > li").first()).toContainText("Fits");
    await expect(page.locator("ol > li").first()).toContainText("Vee runabout");
  });

  test("does not overflow a narrow phone, and a stern nobody has is not found", async ({ page }) => {
    await page.setViewportSize({ width: 360, height: 740 });
    await page.goto(`/shortlist/${STERN}`);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
    expect((await page.request.get("/shortlist/nobody-has-this-stern")).status()).toBe(404);
  });
});
