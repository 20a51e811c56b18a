import { html, LitElement, type PropertyValues, type TemplateResult } from "lit";
import { get, type MakePapers, type PaperPages, type TestSheet } from "../core/api.js";
import { type Source, words } from "./making.js";
import { testPicture } from "./sheet-drawing.js";
import { lengthsShown } from "../core/units.js";

/** As wide as a page's picture is fetched, px. */
const WIDE = 900;

/** What comes out of the paper printer, page by page, and the test pieces that are cut before all others. */
class MakePapersShown extends LitElement {
  static override properties = { source: { attribute: false }, papers: { state: true }, problem: { state: true } };

  source: Source | null = null;
  private papers: MakePapers | null = null;
  /** That `papers` are of. */
  private of: Source | null = null;
  private problem = "";
  private tests = new Map<string, Node>();

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (changed.has("source") && this.source) void this.fetch(this.source);
  }

  private async fetch(source: Source): Promise<void> {
    try {
      const papers = await get<MakePapers>(source.path("papers"));
      if (this.source !== source) return;
      this.tests = new Map(papers.tests.map((test) => [test.name, testPicture(test.svg)]));
      this.of = source;
      this.papers = papers;
      this.problem = "";
    } catch (e) {
      if (this.source === source) this.problem = words(e);
    }
  }

  protected override render(): TemplateResult {
    const { papers } = this;
    return html`<section class="papers" aria-labelledby="papers-title">
        <h2 id="papers-title">On paper and cloth</h2>
        ${this.problem ? html`<p class="problem" role="alert">${this.problem}</p>` : ""}
        ${!papers && !this.problem ? html`<p class="waiting" role="status">Drawing the pages …</p>` : ""}
        <div class="paper-list">${papers?.papers.map((paper) => this.pages(paper)) ?? ""}</div>
      </section>
      ${papers ? this.testing(papers) : ""}`;
  }

  private pages(paper: PaperPages): TemplateResult {
    return html`${paper.pages.map(({ width, height }, i) => {
      const page = `${paper.file}, page ${i + 1} of ${paper.pages.length}`;
      return html`<figure class="paper-page" data-paper=${paper.kind}>
        <img
          src=${this.of?.path("paper", `&kind=${paper.kind}&page=${i}&width=${WIDE}`) ?? ""}
          width=${Math.round(width * 4)}
          height=${Math.round(height * 4)}
          loading="lazy"
          alt=${`${page}: ${paper.what}`}
        />
        <figcaption class="quiet">${page}, ${lengthsShown([width, height])}: ${paper.what}</figcaption>
      </figure>`;
    })}`;
  }

  private testing({ tests, measures }: MakePapers): TemplateResult {
    return html`<section class="tests" aria-labelledby="tests-title">
      <h2 id="tests-title">Test pieces, cut first</h2>
      <dl>
        ${measures.map(
          (measure) => html`<dt>${measure.heading}</dt>
            <dd>${measure.how} <span class="quiet">It becomes: ${measure.becomes}.</span></dd>`,
        )}
      </dl>
      <p>
        The values go to <a href=${`#${encodeURIComponent(this.source?.id ?? "")}&workshop`}>My workshop</a>; what is measured of one
        sheet alone stays here.
      </p>
      <div class="test-list">${tests.map((test) => this.test(test))}</div>
    </section>`;
  }

  private test(test: TestSheet): TemplateResult {
    return html`<figure class="test-piece">
      <div class="sheet-frame" role="img" aria-label=${`Test piece of ${test.name.replace(/^test-/, "")}`}>
        ${this.tests.get(test.name)}
      </div>
      <figcaption class="quiet">${test.name}.svg, ${lengthsShown([test.width, test.height])}</figcaption>
    </figure>`;
  }
}

customElements.define("jackwork-papers", MakePapersShown);
