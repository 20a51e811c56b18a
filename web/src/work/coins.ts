import { html, type TemplateResult } from "lit";
import type { Report } from "../core/api.js";

/** Which coins fit and tip the bucket, and by how much. */
export function coinTable(report: Report): TemplateResult {
  // Where the coin is a bridge it tips nothing, and there is nothing to tell here.
  if (report.coins.every(({ trips }) => trips == null)) return html``;
  const moment = (value: number | null): string => (value == null ? "–" : value.toFixed(2));
  return html`<table class="coins">
    <caption>
      Coins: the moment each turns the bucket with, and the moment needed, N·mm
    </caption>
    <thead>
      <tr>
        <th scope="col">coin</th>
        <th scope="col">fits</th>
        <th scope="col">tips it</th>
        <th scope="col">turns with</th>
        <th scope="col">needed</th>
      </tr>
    </thead>
    <tbody>
      ${report.coins.map(
        (c) => html`<tr>
          <th scope="row">${c.coin}</th>
          <td>${c.fits ? "yes" : "no"}</td>
          <td>${c.trips == null ? "–" : c.trips ? "yes" : "no"}</td>
          <td>${moment(c.tripMomentNmm)}</td>
          <td>${moment(c.needMomentNmm)}</td>
        </tr>`,
      )}
    </tbody>
  </table>`;
}
