import { readFile } from "node:fs/promises";
import { box, expect, freshLabel, openForm, test } from "#tests/e2e/page.ts";

test.describe("A club and its drawer of measurements", () => {
  test("finds a motor in spite of a slip of the finger, and the address says what was sought", async ({
    page,
  }) => {
    await page.goto("/motors");
    const all = await page.getByRole("listitem").count();
    await page.getByRole("searchbox", { name: "Search motors" }).fill("electrc");
    await expect(page.getByRole("link", { name: /Electric/ }).first()).toBeVisible();
    await expect.poll(() => page.getByRole("listitem").count()).toBeLessThan(all);
    await expect(page).toHaveURL(/query=electrc/);
    await page.reload();
    await expect(page.getByRole("searchbox", { name: "Search motors" })).toHaveValue("electrc");
    await page.getByRole("searchbox", { name: "Search motors" }).fill("zzzzzz");
    await expect(page.getByText("Nothing found among")).toBeVisible();
  });

  test("narrows the drawer by shaft, power and steering", async ({ page }) => {
    await page.goto("/motors");
    await page.getByLabel("Shaft", { exact: true }).selectOption("short");
    await page.getByLabel("Power", { exact: true }).selectOption("0-3");
    await page.getByLabel("Steering", { exact: true }).selectOption("tiller");
    await expect(page).toHaveURL(/shaftClass=short&power=0-3&steering=tiller/);
    const facts = page.getByRole("listitem").filter({ hasText: " hp (" });
    await expect(facts.first()).toContainText("short shaft");
    for (const line of await facts.allTextContents()) {
      expect(line).toContain("short shaft");
      expect(Number(/([\d.]+) hp \(/.exec(line)![1])).toBeLessThanOrEqual(3);
    }
  });

  test("takes every motor out as CSV and JSON", async ({ page }) => {
    await page.goto("/motors/exchange");
    for (const [name, heading] of [
      ["Export all motors as CSV", /^\ufeff?"?id"?,/],
      ["Export all motors as JSON", /^\[\s*\{\s*"id"/],
    ] as const) {
      const [download] = await Promise.all([
        page.waitForEvent("download"),
        page.getByRole("link", { name }).click(),
      ]);
      const file = await readFile(await download.path(), "utf8");
      expect(file.slice(0, 60)).toMatch(heading);
      expect(file).toContain("2 hp short-shaft tiller");
    }
  });

  test("brings motors in from a file, and is told row by row what is wrong with one", async ({ page }) => {
    const label = freshLabel("Brought in");
    const id = label.toLowerCase().replaceAll(" ", "-");
    const bad = `id,label,shaftLengthMm\n${id},${label},512\nother-${id},Too long by far,9000\n`;
    await page.goto("/motors/exchange");
    await page
      .getByLabel("File of motors")
      .setInputFiles({ name: "club.csv", mimeType: "text/csv", buffer: Buffer.from(bad) });
    await page.getByRole("button", { name: "Bring in motors" }).click();
    const told = page.getByRole("alert").filter({ hasText: "Nothing was brought in" });
    await expect(told).toBeFocused();
    await expect(told).toContainText("Row 3, shaftLengthMm");

    await page.getByLabel("Bring in the sound ones even where others have faults").check();
    await page.getByRole("button", { name: "Bring in motors" }).click();
    await expect(page.getByRole("status").filter({ hasText: "One motor was brought in" })).toBeVisible();
    await page.goto(`/motors/${id}`);
    await expect(page.getByRole("row", { name: /Shaft length 512 mm/ })).toBeVisible();
  });

  test("removes a motor, and brings it back with one tap", async ({ page }) => {
    const label = freshLabel("Removed by mistake");
    await openForm(page, "/motors/new");
    await box(page, "Label").fill(label);
    await page.getByRole("button", { name: "Save this motor" }).click();
    await expect(page.getByRole("heading", { level: 1, name: label })).toBeVisible();
    await page.getByRole("button", { name: "Remove" }).click();
    const removed = page.getByRole("status").filter({ hasText: `Removed: ${label}` });
    await expect(removed).toBeVisible();
    await expect(page.getByRole("link", { name: label })).toHaveCount(0);
    await removed.getByRole("button", { name: "Undo" }).click();
    await expect(page.getByRole("heading", { level: 1, name: label })).toBeVisible();
    await expect(page.getByText("Brought back, as it was.")).toBeVisible();
    await page.getByRole("link", { name: "History" }).click();
    await expect(page.getByRole("heading", { name: "Version 3: brought back" })).toBeVisible();
  });

  test("sees a label with markup in it as plain words", async ({ page }) => {
    const label = freshLabel('<img src=x onerror="document.title=1"> motor');
    await openForm(page, "/motors/new");
    await box(page, "Label").fill(label);
    await page.getByRole("button", { name: "Save this motor" }).click();
    await expect(page.getByRole("heading", { level: 1, name: label })).toBeVisible();
    await expect(page).not.toHaveTitle("1");
    await page.getByRole("button", { name: "Remove" }).click();
    await expect(page.getByText("Removed:")).toBeVisible();
  });
});
