import { box, expect, freshLabel, openForm, test } from "#tests/e2e/page.ts";

test.describe("A buyer on the quay with a tape", () => {
  test("enters lengths as the tape shows them and sees them in both systems", async ({ page }) => {
    await openForm(page, "/motors/new");
    await box(page, "Shaft length").fill('20 1/2"');
    await expect(page.getByText("520.7 mm = 20 1/2 in")).toBeVisible();
    await box(page, "Thickest transom the clamps hold").fill("6 cm");
    await expect(page.getByText("60 mm = about 2 3/8 in")).toBeVisible();
    await box(page, "Tilt tube above the saddle corner").fill("-10 mm");
    await expect(page.getByText("−10 mm = about −3/8 in")).toBeVisible();
  });

  test("is asked what a bare number means, and one tap settles it", async ({ page }) => {
    await openForm(page, "/motors/new");
    await box(page, "Shaft length").fill("15 1/2");
    const choice = page.getByRole("group", { name: /^Shaft length: .*do you mean/ });
    await choice.getByRole("button", { name: /15\.5 in/ }).click();
    await expect(page.getByText("393.7 mm = 15 1/2 in")).toBeVisible();
    await expect(choice).toBeHidden();
  });

  test("saves an incomplete motor and reads a verdict on a stern", async ({ page }) => {
    const label = freshLabel("Seen on the quay");
    await openForm(page, "/motors/new");
    await box(page, "Label").fill(label);
    await page.getByRole("radiogroup", { name: "Shaft class" }).getByLabel("Long, 20 in").check();
    await box(page, "Shaft length").fill('20 1/2"');
    await box(page, "Rated power").fill("9.9 hp");
    await page.getByRole("button", { name: "Save this motor" }).click();

    await expect(page.getByRole("heading", { level: 1, name: label })).toBeVisible();
    await expect(page.getByRole("status").filter({ hasText: "Saved" })).toBeVisible();
    await expect(page.getByRole("row", { name: /Shaft length 520\.7 mm/ })).toBeVisible();
    await expect(page.getByRole("row", { name: /Rated power 7\.38 kW/ })).toContainText("papers or seller");

    await page.getByLabel("Stern", { exact: true }).selectOption({ index: 1 });
    await page.getByRole("button", { name: "Will it suit?" }).click();
    await expect(page).toHaveURL(/\/fit\/[^/]+\/seen-on-the-quay/);
    await expect(page.getByRole("heading", { name: /cannot tell|fouls|fits/i }).first()).toBeVisible();
  });

  test("is told as the numbers go in what they settle against the chosen stern", async ({ page }) => {
    await openForm(page, "/motors/new");
    const told = page.getByRole("complementary", { name: "What can be told so far, hang" });
    await expect(told).toContainText("Still wants shaft length");
    await page.getByLabel("Tell me as I go, against this stern").selectOption({ index: 1 });
    await expect(told).toContainText("So far, against");
    await expect(told).toContainText("Cannot tell");
  });

  test("loses nothing when the page is loaded again", async ({ page }) => {
    await openForm(page, "/motors/new");
    await box(page, "Shaft length").fill("512 mm");
    await expect(page.getByText("512 mm = ")).toBeVisible();
    await page.reload();
    await expect(box(page, "Shaft length")).toHaveValue("512 mm");
    await expect(page.getByText("Taken up where you left off")).toBeVisible();
    await page.getByRole("button", { name: "Start afresh instead" }).click();
    await expect(box(page, "Shaft length")).toHaveValue("");
  });

  test("finds the signs a phone's number pad lacks above it, and only there", async ({ page, isMobile }) => {
    await openForm(page, "/motors/new");
    const signs = page.getByRole("group", { name: "Signs for Shaft length" });
    await box(page, "Shaft length").click();
    if (!isMobile) return expect(signs).toBeHidden();
    await box(page, "Shaft length").fill("20");
    await signs.getByRole("button", { name: "1/2" }).tap();
    await signs.getByRole("button", { name: "″ in" }).tap();
    await expect(box(page, "Shaft length")).toHaveValue('20 1/2"');
    await expect(page.getByText("520.7 mm = 20 1/2 in")).toBeVisible();
  });
});

test.describe("A buyer whose browser runs no script", () => {
  test.use({ javaScriptEnabled: false });

  test("still enters a motor, chooses what a bare number means, and saves it", async ({ page }) => {
    const label = freshLabel("Without script");
    await page.goto("/motors/new");
    await box(page, "Label").fill(label);
    await box(page, "Shaft length").fill("15 1/2");
    await page.getByRole("button", { name: "Save this motor" }).click();
    await expect(page.getByRole("alert")).toContainText("Not saved yet");
    await expect(box(page, "Label")).toHaveValue(label);
    await page.getByRole("button", { name: /15\.5 in/ }).click();
    await expect(box(page, "Shaft length")).toHaveValue("15.5 in");
    await page.getByRole("button", { name: "Save this motor" }).click();
    await expect(page.getByRole("heading", { level: 1, name: label })).toBeVisible();
  });
});
