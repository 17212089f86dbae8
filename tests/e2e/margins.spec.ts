import AxeBuilder from "@axe-core/playwright";
import type { Locator, Page } from "@playwright/test";
import { expect, freshLabel, test } from "#tests/e2e/page.ts";

const WHOLE = "9-9-hp-long-tiller-four-stroke";
const STERN = "vee-runabout-long-well";
/** Numbers nobody took on the motor of these tests, and numbers put down by eye. */
const MISSING = ["tiltAxisAboveMm", "cowlFrontMm", "tillerLengthMm"];
const BY_EYE = ["cowlWidthMm", "steerAxisAftMm", "clampDepthMm", "shaftLengthMm"];

/** Keeps a motor like an invented one, with three numbers missing and four put down by eye; gives its id. */
async function halfMeasured(page: Page, origin: string): Promise<string> {
  const whole = await (await page.request.get(`/api/motors/${WHOLE}`)).json();
  const label = freshLabel("Half measured");
  const id = label.toLowerCase().replaceAll(" ", "-");
  const record = Object.fromEntries(Object.entries(whole).filter(([key]) => !MISSING.includes(key)));
  for (const key of BY_EYE) record[key] = { value: whole[key].value, how: "estimated" };
  record.bracketWidthMm = { value: whole.bracketWidthMm.value, how: "measured" };
  const made = await page.request.post("/api/motors", {
    data: { ...record, id, label },
    headers: { Origin: origin },
  });
  expect(made.status()).toBe(201);
  return id;
}

const section = (page: Page, name: string | RegExp): Locator => page.getByRole("region", { name });
const question = (page: Page, name: RegExp): Locator =>
  page.getByRole("listitem").filter({
    has: page.getByRole("heading", { level: 3, name }),
  });

test.describe("Somebody who never heard of uncertainty", () => {
  test("is told what to measure next where numbers are missing, and how it is taken", async ({
    page,
    baseURL,
  }) => {
    await page.goto(`/fit/${STERN}/${await halfMeasured(page, baseURL!)}`);
    await expect(page.getByRole("heading", { name: "Cannot tell yet" })).toBeVisible();
    const next = section(page, /^Measure this next: tilt tube above the saddle corner/);
    await expect(next).toContainText("Nobody has taken it yet");
    await expect(next).toContainText("From the saddle up along the transom face");
    await expect(next.getByRole("link", { name: "Enter it" })).toHaveAttribute(
      "href",
      /\/edit#tiltAxisAboveMm$/,
    );
    const known = section(page, "How well the numbers are known");
    await expect(known).toContainText("4 are estimated by eye: shaft length");
    await expect(known).toContainText("3 are not known: tilt tube above the saddle corner");
  });

  test("fills the gaps from like motors, sees from which and how wide, and that nothing is kept", async ({
    page,
    baseURL,
  }) => {
    const id = await halfMeasured(page, baseURL!);
    await page.goto(`/fit/${STERN}/${id}`);
    await page.getByRole("link", { name: "Fill the motor's gaps from like motors" }).click();
    await expect(page).toHaveURL(/like=1/);
    const like = section(page, "From like motors");
    await expect(like).toContainText("3 numbers were not taken on this motor");
    await like.getByText("Which numbers, and from which motors").click();
    const row = like.getByRole("listitem").filter({ hasText: "Cowl forward of the steering axis" });
    await expect(row).toContainText(/about \d+\smm ±\s\d+/);
    await expect(row.locator('a[href^="/motors/"]')).toHaveCount(5);
    await expect(page.getByText("rests on like motors").first()).toBeVisible();
    const kept = await (await page.request.get(`/api/motors/${id}`)).json();
    expect(MISSING.filter((key) => key in kept)).toEqual([]);
    await like.getByRole("link", { name: "Only what was taken on this motor" }).click();
    await expect(page.getByRole("link", { name: /Fill the motor's gaps/ })).toBeVisible();
  });

  test("opens what the doubt of a question is made of, the heaviest number first", async ({
    page,
    baseURL,
  }) => {
    await page.goto(`/fit/${STERN}/${await halfMeasured(page, baseURL!)}?like=1`);
    const plate = question(page, /plate run at the height/);
    const lines = plate.getByRole("list").getByRole("listitem");
    await expect(lines.first()).toBeHidden();
    await plate.getByText("What the doubt is made of").click();
    await expect(lines.first()).toContainText("Shaft length");
    await expect(lines.first()).toContainText("1 mm more of this is 1 mm more room");
    await expect(lines.first()).toContainText("Estimated by eye; the ± as usual for that");
    const shares = await lines.getByText(/^(under )?\d+\s%/).allTextContents();
    const figures = shares.map((text) => (text.startsWith("under") ? 0 : Number.parseInt(text, 10)));
    expect(figures.length).toBeGreaterThan(3);
    expect(figures).toEqual(figures.toSorted((a, b) => b - a));
    await expect(plate).toContainText("in about 19 cases out of 20");
  });

  test("opens every list of doubts at once, for reading or for paper", async ({ page }) => {
    await page.goto(`/fit/${STERN}/${WHOLE}`);
    const lists = page.locator("details[data-doubt]");
    expect(await lists.count()).toBeGreaterThan(5);
    await page.getByRole("button", { name: "Open every list of doubts" }).click();
    await expect(page.locator("details[data-doubt]:not([open])")).toHaveCount(0);
    await page.getByRole("button", { name: "Close every list of doubts" }).click();
    await expect(page.locator("details[data-doubt][open]")).toHaveCount(0);
  });

  test("finds every margin on one scale, and the same in a table", async ({ page }) => {
    await page.goto(`/fit/${STERN}/${WHOLE}`);
    const scale = section(page, "Room to spare, all on one scale");
    await expect(scale.getByText("at the limit").first()).toBeVisible();
    await expect(scale.getByRole("listitem").filter({ hasText: "plate height" })).toContainText(
      /4\.3\smm to spare, give\sor\stake\s2\.7/,
    );
    const drawn = await scale.getByRole("listitem").count();
    await scale.getByText("The same as a table").click();
    const table = scale.getByRole("table", { name: "Room to spare of every question" });
    await expect(table.getByRole("row")).toHaveCount(drawn + 1);
    const bracket = table.getByRole("row", { name: /^bracket/ });
    await expect(bracket).toContainText(/223\smm/);
  });

  test("says which tape was read: it counts at once, stands in the address and is remembered", async ({
    page,
    baseURL,
  }) => {
    const id = await halfMeasured(page, baseURL!);
    await page.goto(`/fit/${STERN}/${id}`);
    const bracket = page.locator("#check-bracket strong").first();
    await expect(bracket).toContainText(/give\sor\stake/);
    const before = await bracket.textContent();
    await page.getByText("Tape: class II, read to 1 mm").click();
    await page.getByLabel("Class, printed on the tape in an oval").selectOption("III");
    await page.getByLabel("Smallest division you read").selectOption({ label: "1/4 in" });
    await page.getByRole("button", { name: "Reckon with this tape" }).click();
    await expect(page).toHaveURL(/tape=III-1\/4in/);
    await expect(page.getByText("Tape: class III, read to 1/4 in")).toBeVisible();
    await expect(bracket).not.toHaveText(before!);

    await page.goto(`/fit/${STERN}/${id}`);
    await expect(page.getByText("Tape: class III, read to 1/4 in")).toBeVisible();
    await page.goto(`/fit/${STERN}/${id}?tape=I-0.5`);
    await expect(page.getByText("Tape: class I, read to 0.5 mm")).toBeVisible();
  });
});

test.describe("Somebody whose motor fouls", () => {
  const ADDRESS = "/fit/vee-fast-boat-deep-notch/8-hp-long-tiller-two-stroke";

  test("reads what each remedy leaves to spare, and tries on the page what costs nothing", async ({
    page,
  }) => {
    await page.goto(ADDRESS);
    await expect(page.getByRole("heading", { name: "Fouls", exact: true })).toBeVisible();
    const remedies = section(page, "What would serve").getByRole("listitem");
    const straight = remedies.filter({ hasText: "Hold the motor straight while tilting." });
    await expect(straight).toContainText(/Then it fits, with .+ to spare, give\sor\stake/);
    await expect(remedies.filter({ hasText: "each side" }).getByRole("link")).toHaveCount(0);
    await straight.getByRole("link", { name: "Try it on this page" }).click();
    await expect(page).toHaveURL(/straight=1/);
    await expect(page.getByRole("heading", { name: "Fits", exact: true })).toBeVisible();
    await expect(page.getByText("the motor held straight while it tilts")).toBeVisible();
    await page.getByRole("link", { name: "Back to how it is" }).click();
    await expect(page.getByRole("heading", { name: "Fouls", exact: true })).toBeVisible();
  });

  test("never finds an inch parted from its fraction", async ({ page }) => {
    await page.goto(`${ADDRESS}?units=in`);
    const verdict = await page.getByRole("region", { name: "Fouls" }).textContent();
    expect(verdict).toMatch(/\d\/\d+\u00a0in/);
    expect(verdict).not.toMatch(/\d \d+\/\d+|\d in\b/);
  });
});

for (const colorScheme of ["light", "dark"] as const) {
  test(`a half-measured pairing with every list open is sound to axe, ${colorScheme}`, async ({
    page,
    baseURL,
  }) => {
    await page.emulateMedia({ colorScheme });
    await page.goto(`/fit/${STERN}/${await halfMeasured(page, baseURL!)}?like=1&straight=1`);
    // The button is the browser's own work: once it answers, the page is alive.
    await page.getByRole("button", { name: "Open every list of doubts" }).click();
    await expect(page.getByRole("button", { name: "Close every list of doubts" })).toBeVisible();
    await page.evaluate(() => {
      for (const each of document.querySelectorAll("details")) each.open = true;
    });
    const { violations } = await new AxeBuilder({ page })
      .withTags(["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"])
      .analyze();
    expect(violations.map(({ id, nodes }) => [id, nodes[0]?.html])).toEqual([]);
    const wide = await page.evaluate(() => document.documentElement.scrollWidth > window.innerWidth);
    expect(wide, "nothing pushes the page wider than the window").toBe(false);
  });
}

test.describe("Without script", () => {
  test.use({ javaScriptEnabled: false });

  test("the tape is chosen by a round trip, and nothing else that was asked for is lost", async ({
    page,
  }) => {
    await page.goto(`/fit/${STERN}/${WHOLE}?units=in&straight=1`);
    await page.getByText("Tape: class II, read to 1 mm").click();
    await page.getByLabel("Smallest division you read").selectOption({ label: "1/16 in" });
    await page.getByRole("button", { name: "Reckon with this tape" }).click();
    await expect(page).toHaveURL(/units=in&tape=II-1\/16in&straight=1/);
    await expect(page.getByText("Tape: class II, read to 1/16 in")).toBeVisible();
  });
});
