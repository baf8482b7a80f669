import { withoutTurns } from '../../units/visible-text.ts';
import { answerSection } from './answer-section.ts';
import { assumptionsSection } from './assumptions-section.ts';
import { cautionsSection } from './cautions-section.ts';
import { doubtsSection } from './doubts-section.ts';
import { drawAlone, drawTwice } from './draw-twice.ts';
import { boughtPlan, drawables } from './drawables.ts';
import { figure } from './figure.ts';
import { freshAirSection } from './fresh-air-section.ts';
import { handbookCrossCheckSection } from './handbook-cross-check-section.ts';
import { html, raw } from './html.ts';
import { methodSection } from './method-section.ts';
import { optionsSection } from './options-section.ts';
import { packPictures, unpackPictures } from './packed-pictures.ts';
import { pageFrame } from './page-frame.ts';
import { pictureDataOf } from './picture-data-of.ts';
import { firstChoice } from './pictures.ts';
import { picturesSection } from './pictures-section.ts';
import { purchaseSection } from './purchase-section.ts';
import type { ReportInput } from './report-input.ts';

/** A report, and its pictures as files of their own. */
export interface Report {
  readonly page: string;
  readonly pictures: () => Promise<{ readonly name: string; readonly svg: string }[]>;
}

/**
 * The report of a study as one page: answer, options, purchase, pictures, fresh air, handbook cross-check, doubts,
 * cautions, assumptions, method. It is whole without its script, which only lets readers choose and
 * point.
 */
export async function reportPage(input: ReportInput): Promise<Report> {
  const { study } = input;
  const { purchase } = study;
  const packed = packPictures(pictureDataOf(study.pictured));
  // Drawn from what the page holds, so that a picture drawn again in it is the same.
  const data = unpackPictures(packed);
  const choice = firstChoice(data, study.room);
  const pictures = drawables(study, data, choice);
  const drawn = await drawTwice(pictures);
  const placed = (id: string) => drawn.filter((one) => one.id === id).map(figure);
  const apart = new Set([MONEY, DOUBT]);
  const sections = [
    answerSection(input),
    optionsSection(input),
    ...(purchase === null ? [] : [purchaseSection(purchase, html`${placed(MONEY)}`)]),
    picturesSection(
      drawn.filter(({ id }) => !apart.has(id)),
      data,
      choice,
    ),
    freshAirSection(input),
    handbookCrossCheckSection(input),
    ...(purchase === null ? [] : [doubtsSection(study, purchase, html`${placed(DOUBT)}`)]),
    cautionsSection(input),
    assumptionsSection(study),
    methodSection(input),
  ];
  const json = JSON.stringify({ packed, choice, bought: boughtPlan(study, data) });
  const inert = withoutTurns(json).replaceAll('<', '\\u003c');
  const held = raw(`<script type="application/json" id="picture-data">${inert}</script>`);
  return { page: pageFrame(input, sections, held), pictures: () => drawAlone(pictures) };
}

const MONEY = 'picture-money';
const DOUBT = 'picture-doubt';
