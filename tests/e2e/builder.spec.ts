import { box, expect, freshLabel, openForm, test } from "#tests/e2e/page.ts";

test.describe("A builder before the saw", () => {
  test("enters an uncut stern and sees where a motor wants it cut", async ({ page }) => {
    const label = freshLabel("Uncut transom");
    await openForm(page, "/sterns/new");
    await box(page, "Label").fill(label);
    await page.getByRole("radiogroup", { name: "Hull form at the stern" }).getByLabel("Flat bottom").check();
    await box(page, "Transom rake").fill("12");
    await box(page, "Transom thickness").fill("40 mm");
    await box(page, "Top of the transom").fill("22 in");
    await page.getByRole("button", { name: "Save this stern" }).click();
    await expect(page.getByRole("heading", { level: 1, name: label })).toBeVisible();
    await expect(page.getByRole("row", { name: /Top of the transom 558\.8 mm/ })).toContainText("22 in");

    await page.getByLabel("Motor", { exact: true }).selectOption({ index: 1 });
    await page.getByRole("button", { name: "Will it suit?" }).click();
    await expect(page).toHaveURL(/\/fit\/uncut-transom[^/]*\//);
    await expect(page.getByRole("heading", { name: /cannot tell|fouls|fits/i }).first()).toBeVisible();
    await expect(page.getByText(/seat/i).first()).toBeVisible();
  });

  test("keeps everything typed when something impossible is typed too", async ({ page }) => {
    await openForm(page, "/sterns/new");
    await box(page, "Label").fill(freshLabel("Slip of the pen"));
    await box(page, "Transom thickness").fill("40 mm");
    await box(page, "Seat height").fill('15 31/16"');
    await page.getByRole("button", { name: "Save this stern" }).click();

    const summary = page.getByRole("alert").filter({ hasText: "Not saved yet" });
    await expect(summary).toBeFocused();
    await expect(summary).toContainText("The fraction after a whole number must be less than one.");
    await expect(box(page, "Transom thickness")).toHaveValue("40 mm");
    await expect(box(page, "Seat height")).toHaveValue('15 31/16"');
    await summary.getByRole("link", { name: "Seat height" }).click();
    await expect(box(page, "Seat height")).toBeFocused();
    await expect(box(page, "Seat height")).toHaveAttribute("aria-invalid", "true");

    await box(page, "Seat height").fill('15 15/16"');
    await page.getByRole("button", { name: "Save this stern" }).click();
    await expect(page.getByRole("row", { name: /Seat height 404\.8 mm/ })).toBeVisible();
  });

  test("comes back to the numbers as they were written, and to a history of every change", async ({
    page,
  }) => {
    const label = freshLabel("Raised seat");
    await openForm(page, "/sterns/new");
    await box(page, "Label").fill(label);
    await box(page, "Seat height").fill('15 1/2"');
    await page.getByRole("button", { name: "Save this stern" }).click();
    await expect(page.getByRole("heading", { level: 1, name: label })).toBeVisible();

    await page.getByRole("link", { name: "Edit" }).click();
    await expect(box(page, "Seat height")).toHaveValue('15 1/2"');
    await box(page, "Seat height").fill("16 in");
    await page.getByRole("button", { name: "Save this stern" }).click();
    await expect(page.getByRole("row", { name: /Seat height 406\.4 mm/ })).toBeVisible();

    await page.getByRole("link", { name: "History" }).click();
    const change = page.getByRole("row", { name: /Seat height/ });
    await expect(change).toContainText("393.7 mm");
    await expect(change).toContainText("406.4 mm");
  });

  test("sees another's numbers beside the own when both wrote at once", async ({ page, context }) => {
    const label = freshLabel("Two at once");
    await openForm(page, "/sterns/new");
    await box(page, "Label").fill(label);
    await box(page, "Seat height").fill("400 mm");
    await page.getByRole("button", { name: "Save this stern" }).click();
    await expect(page.getByRole("heading", { level: 1, name: label })).toBeVisible();
    const sheet = new URL(page.url()).pathname;

    const other = await context.newPage();
    await openForm(page, `${sheet}/edit`);
    await openForm(other, `${sheet}/edit`);
    await box(other, "Seat height").fill("410 mm");
    await other.getByRole("button", { name: "Save this stern" }).click();
    await expect(other.getByRole("row", { name: /Seat height 410 mm/ })).toBeVisible();

    await other.close();
    await page.bringToFront();
    await box(page, "Seat height").fill("420 mm");
    await page.getByRole("button", { name: "Save this stern" }).click();
    const clash = page.getByRole("alert").filter({ hasText: "Somebody else saved this stern" });
    await expect(clash).toBeFocused();
    await expect(clash.getByRole("row", { name: /Seat height 410 mm 420 mm/ })).toBeVisible();
    await expect(box(page, "Seat height")).toHaveValue("420 mm");
    await page.getByRole("button", { name: "Save mine over it" }).click();
    await expect(page.getByRole("row", { name: /Seat height 420 mm/ })).toBeVisible();
  });
});
