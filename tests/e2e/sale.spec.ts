import { box, expect, freshLabel, test } from "#tests/e2e/page.ts";

const STERN = "vee-runabout-long-well";

test.describe("A buyer at a sale", () => {
  test("types a few numbers and is told what to measure next, with nothing kept", async ({ page }) => {
    await page.goto(`/sale?stern=${STERN}`);
    await expect(page.getByText("Type what you know of the motor")).toBeVisible();
    await page.getByRole("radiogroup", { name: "Shaft class" }).getByLabel("Short, 15 in").check();
    await box(page, "Rated power").fill("15 hp");
    await expect(page).toHaveURL(/shaftClass=short.*powerKw=15\+hp|powerKw=15\+hp.*shaftClass=short/);
    // A short shaft, nominally 381 mm, on a seat 510 mm up: five inches too high for any of its class.
    await expect(page.getByRole("heading", { level: 2, name: "Fouls" })).toBeVisible();

    await page.getByRole("radiogroup", { name: "Shaft class" }).getByLabel("Long, 20 in").check();
    await expect(page.getByRole("heading", { level: 2, name: "Cannot tell yet" })).toBeVisible();
    await page.getByRole("radiogroup", { name: "Steering" }).getByLabel("Tiller").check();
    await expect(page.getByText(/numbers come from like motors/)).toBeVisible();

    await page.goto("/motors?query=as typed");
    await expect(page.getByText("As typed", { exact: true })).toHaveCount(0);
  });

  test("measures the leg in inches and finds it too long", async ({ page }) => {
    await page.goto(`/sale?stern=${STERN}&shaftClass=long&steering=tiller&tillerFolds=yes&powerKw=15 hp`);
    await box(page, "Shaft length").fill("24 1/2 in");
    await expect(page.getByText("622.3 mm").first()).toBeVisible();
    // 622 mm under a seat of 510 mm: the plate hangs some 112 mm below the datum, an inch is the most.
    await expect(page.getByRole("heading", { level: 2, name: "Fouls" })).toBeVisible();
    const panel = page.getByRole("region", { name: "Fouls" });
    await expect(panel).toContainText(/the plate stands 1\d\d\smm below the datum/i);
    await expect(box(page, "Shaft length")).toHaveValue("24 1/2 in");
  });

  test("keeps the motor when asked to, with only what was typed", async ({ page }) => {
    await page.goto(`/sale?stern=${STERN}&shaftClass=long&powerKw=15 hp&shaftLengthMm=520 mm`);
    const label = freshLabel("Seen at the spring sale");
    await page.getByLabel("Its name, if you want to keep it").fill(label);
    await page.getByRole("button", { name: "Keep this motor" }).click();
    await expect(page.getByRole("heading", { level: 1, name: label })).toBeVisible();
    await expect(page.getByRole("row", { name: /Shaft length 520 mm/ })).toBeVisible();
    await expect(page.getByText(/2 measured|1 measured, 1 from papers/).first()).toBeVisible();
  });

  test("says at the box what cannot be read, and goes on without it", async ({ page }) => {
    await page.goto(`/sale?stern=${STERN}&shaftClass=long&powerKw=15 hp&shaftLengthMm=twenty`);
    await expect(page.getByRole("heading", { level: 2, name: "Cannot tell yet" })).toBeVisible();
    await expect(box(page, "Shaft length")).toHaveAttribute("aria-invalid", "true");
    await expect(box(page, "Shaft length")).toHaveValue("twenty");
  });
});
