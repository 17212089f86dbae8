import { readFile } from "node:fs/promises";
import AxeBuilder from "@axe-core/playwright";
import { expect, test } from "#tests/e2e/page.ts";

const STERN = "vee-new-build-well-planned";
const MOTOR = "15-hp-long-tiller-four-stroke";
const PLAN = `/cut-plan/${STERN}?motors=${MOTOR}`;

test.describe("A builder at the sheet of plywood", () => {
  test("picks a motor for an uncut stern, takes the PDF, ticks the list and enters what was built", async ({
    page,
  }) => {
    await page.goto("/cut-plan");
    await page.getByLabel("Stern", { exact: true }).selectOption(STERN);
    await page.getByRole("button", { name: "Pick its motor" }).click();
    await page.getByLabel("15 hp long-shaft tiller, four-stroke, the rescue boat's").check();
    await page.getByRole("button", { name: "Plan the cuts" }).click();
    await expect(page).toHaveURL(new RegExp(`/cut-plan/${STERN}\\?.*${MOTOR}`));

    await expect(page.getByRole("heading", { name: "The notch", exact: true })).toBeVisible();
    await expect(page.getByRole("heading", { name: "Well sole" })).toBeVisible();
    await expect(page.getByRole("note", { name: "At the saw" })).toContainText("kicks back");
    await expect(page.getByRole("note", { name: "At the epoxy" })).toContainText("fumes");

    const coming = page.waitForEvent("download");
    await page.getByRole("link", { name: "Everything in one PDF, A4" }).click();
    const download = await coming;
    expect(download.suggestedFilename()).toBe(`cut-plan-${STERN}.pdf`);
    const bytes = await readFile(await download.path());
    expect(bytes.subarray(0, 5).toString("latin1")).toBe("%PDF-");

    const first = page.getByRole("checkbox", { name: /Prop the hull/ });
    await expect(page.getByText(/^0 of \d+ done$/)).toBeVisible();
    await first.check();
    await expect(page.getByText(/^1 of \d+ done$/)).toBeVisible();
    await page.reload();
    await expect(page.getByText(/^1 of \d+ done$/)).toBeVisible();
    await expect(first).toBeChecked();

    const built = page.getByRole("form", { name: "As built" });
    await built.getByLabel("Seat height").fill("515 mm");
    await built.getByLabel("Notch width").fill("540");
    await built.getByRole("button", { name: "Show what is left" }).click();
    await expect(page.getByText("Which do you mean?")).toBeVisible();
    await expect(page.getByLabel("Seat height")).toHaveValue("515 mm");
    await page.getByRole("link", { name: "540 mm", exact: true }).click();
    await expect(page.getByRole("row", { name: /Notch width 556 mm 540 mm/ })).toBeVisible();
    await expect(page.getByText(/The notch is still too narrow/)).toBeVisible();
    await expect(page.getByRole("table", { name: "The room that is left" })).toBeVisible();
  });

  test("chooses another wood in inches, and is told at the box what cannot be", async ({ page }) => {
    await page.goto(PLAN);
    const choices = page.getByRole("form", { name: "Your choices" });
    await page.getByText("Your choices: wood, sole, screws, posts").click();
    await choices.getByLabel("Sole panel, thickness").fill("1/2 in");
    await choices.getByLabel("Fillet radius").fill("5 m");
    await choices.getByRole("button", { name: "Plan it so" }).click();
    await expect(page.getByText("Fillet radius must lie between 3 and 60 mm; you gave 5000.")).toBeVisible();
    await expect(choices.getByLabel("Sole panel, thickness")).toHaveValue("1/2 in");
    await choices.getByLabel("Fillet radius").fill("3/8 in");
    await choices.getByRole("button", { name: "Plan it so" }).click();
    await expect(page.getByText("From sheet 12.7 mm thick")).toBeVisible();
    await page.getByRole("link", { name: "Inches" }).click();
    await expect(page.getByText("From sheet 1/2 in thick")).toBeVisible();
  });

  test("whose rule shows 98.5 mm is told not to use the templates, and is given corrected ones", async ({
    page,
  }) => {
    await page.goto(PLAN);
    await page.getByLabel("What did your rule show?").fill("98.5");
    await page.getByRole("button", { name: "Set", exact: true }).click();
    await expect(page.getByText(/1\.5 % too small: do not use these templates/)).toBeVisible();
    await expect(page.getByRole("link", { name: /Everything in one PDF, A4, corrected/ })).toHaveAttribute(
      "href",
      /shown=98\.5/,
    );
    await page.getByLabel("What did your rule show?").fill("100.2");
    await page.getByRole("button", { name: "Set", exact: true }).click();
    await expect(page.getByText("The printer kept the size: the templates can be used.")).toBeVisible();
  });
});

for (const scheme of ["light", "dark"] as const) {
  test(`plan, picking and as built are sound to axe and keep their width in the ${scheme} theme`, async ({
    page,
  }) => {
    test.setTimeout(240_000);
    await page.emulateMedia({ colorScheme: scheme });
    const built = `/cut-plan/${STERN}/as-built?motors=${MOTOR}&built.seatMm=515+mm&built.notchWidthMm=22`;
    const wrong = `${PLAN}&soleThicknessMm=12&filletRadiusMm=5+m`;
    const missing = `/cut-plan/round-tender-hardly-known?motors=${MOTOR}`;
    const pages = [
      "/cut-plan",
      `/cut-plan/${STERN}`,
      PLAN,
      wrong,
      built,
      built.replace("=22", "=540+mm"),
      missing,
    ];
    for (const path of pages) {
      await page.goto(path);
      const { violations } = await new AxeBuilder({ page })
        .withTags(["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"])
        .analyze();
      const found = violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html.slice(0, 160)}`);
      expect(found, path).toEqual([]);
      const [wide, window] = await page.evaluate(() => [
        document.documentElement.scrollWidth,
        globalThis.innerWidth,
      ]);
      expect(wide, path).toBeLessThanOrEqual(window!);
    }
  });
}
