import { expect, test } from "#tests/e2e/page.ts";

const STERN = "vee-new-build-well-planned";

test.describe("A builder before the saw", () => {
  test("sees each shaft class by its nominal length against the present top", async ({ page }) => {
    await page.goto(`/shaft/${STERN}`);
    // 15 and 20 in, less an inch: 355.6 to 381 and 482.6 to 508 mm, to whole millimetres inside.
    await expect(page.getByRole("row", { name: /^short/ })).toContainText("356 to 381 mm");
    await expect(page.getByRole("row", { name: /^long/ })).toContainText("483 to 508 mm");
    // The uncut top stands 640 mm up: an ultra-long leg wants 762 less half an inch, 109 mm more.
    await expect(page.getByRole("row", { name: /^ultra-long/ })).toContainText("a riser of 109 mm");
    await expect(page.getByRole("complementary", { name: "Cautions" })).toContainText("Before the saw");
  });

  test("is told between which heights to saw for a motor, and sees it drawn", async ({ page }) => {
    await page.goto(`/shaft/${STERN}?shaftClass=long`);
    const row = page.getByRole("row", { name: /rescue boat/ });
    await expect(row).toContainText(/\d{3} to \d{3}\smm/);
    await expect(row).toContainText(/down from the top/);
    await expect(page.getByRole("img", { name: /seats that could be cut/i })).toBeVisible();
  });

  test("cuts once for several motors and sees what each gives up", async ({ page }) => {
    await page.goto(`/shaft/${STERN}?shaftClass=long`);
    await page.getByRole("checkbox", { name: /rescue boat/ }).check();
    await page.getByRole("checkbox", { name: /committee boat/ }).check();
    await page.getByRole("button", { name: "Show, and cut for those ticked" }).click();
    await expect(page.getByRole("heading", { name: /Cut once for 2/ })).toBeVisible();
    await expect(page.getByText(/to the nearer edge of its window/).first()).toBeVisible();
    await expect(page).toHaveURL(/motors=.*motors=/);
  });

  test("reads in inches when asked", async ({ page }) => {
    await page.goto(`/shaft/${STERN}?units=in`);
    await expect(page.getByRole("row", { name: /^long/ })).toContainText("19 to 20 in");
  });
});
