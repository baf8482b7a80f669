import { airSection } from './air-section.ts';
import { answerSection } from './answer-section.ts';
import { assumptionsSection } from './assumptions-section.ts';
import { cautionsSection } from './cautions-section.ts';
import type { Document } from './document-frame.ts';
import { doubtsSection } from './doubts-section.ts';
import { drawAlone, drawTwice } from './draw-twice.ts';
import { boughtPlan, drawables } from './drawables.ts';
import { figure } from './figure.ts';
import { type HeldTrial, heldTrial } from './held-trial.ts';
import { type Html, html, raw } from './html.ts';
import { inertJson } from './inert-json.ts';
import { methodSection } from './method-section.ts';
import { packPictures, unpackPictures } from './packed-pictures.ts';
import { pageFrame } from './page-frame.ts';
import type { WeekWord } from './picture-data.ts';
import { pictureDataOf } from './picture-data-of.ts';
import { isOfAir, PICTURE, type PictureId, withPurchase } from './picture-ids.ts';
import { firstChoice, PICTURES, pictureId } from './pictures.ts';
import { picturesSection } from './pictures-section.ts';
import { plansSection } from './plans-section.ts';
import { purchaseSection } from './purchase-section.ts';
import type { ReportInput } from './report-input.ts';
import { tryMarkup } from './try-markup.ts';

/** A report, and its pictures as files of their own. */
export interface Report extends Document {
  readonly pictures: () => Promise<{ readonly name: string; readonly svg: string }[]>;
}

/**
 * The report of a study as one page: answer, plans, the sum, hours, air, doubts, cautions,
 * assumptions, method. It is whole without its script, which only lets readers choose and
 * point.
 */
export async function reportPage(input: ReportInput): Promise<Report> {
  const { study } = input;
  const { purchase } = study;
  const packed = packPictures(pictureDataOf(study.pictured, study.room));
  // Drawn from what the page holds, so that a picture drawn again in it is the same.
  const data = unpackPictures(packed);
  const choice = firstChoice(data, study.room, weekOf(study));
  const undrawn = input.served?.drawn === false;
  const pictures = undrawn ? [] : drawables(study, data, choice);
  const drawn = await drawTwice(pictures);
  const placed = (id: PictureId) => html`${drawn.filter((one) => one.id === id).map(figure)}`;
  const ofRooms = new Set(PICTURES.map(pictureId).flatMap((id) => [id, withPurchase(id)]));
  const trial = heldTrial(input, data);
  const sections = [
    answerSection(input),
    plansSection(input, placed(PICTURE.tradeOff), tryOf(input, trial)),
    ...(purchase === null || purchase.sum === null
      ? []
      : [purchaseSection({ ...purchase, sum: purchase.sum }, placed(PICTURE.money))]),
    ...(undrawn
      ? []
      : [
          picturesSection(
            drawn.filter(({ id }) => ofRooms.has(id)),
            data,
            choice,
          ),
        ]),
    airSection(
      input,
      drawn.filter(({ id }) => isOfAir(id)),
    ),
    ...(purchase === null
      ? []
      : [
          doubtsSection(study, purchase, {
            draws: placed(PICTURE.draws),
            doubt: placed(PICTURE.doubt),
          }),
        ]),
    cautionsSection(input),
    assumptionsSection(study),
    methodSection(input),
  ];
  const inert = inertJson({ packed, choice, bought: boughtPlan(study, data), trial });
  const held = raw(`<script type="application/json" id="picture-data">${inert}</script>`);
  return { ...pageFrame(input, sections, held), pictures: () => drawAlone(pictures) };
}

function tryOf({ living, study }: ReportInput, trial: HeldTrial | null): Html | null {
  if (living === null) return null;
  return tryMarkup(living, study, trial?.spans.map(({ name }) => name) ?? []);
}

/** The week that a question is about: the dampest for damp, the hottest for cooling. */
function weekOf({ options, purchase }: ReportInput['study']): WeekWord {
  if (purchase === null) return 'coldest';
  if (purchase.about.dries) return 'dampest';
  const removed = ({ measures }: (typeof options)[number]): number => measures.cooling.removed_kwh;
  return removed(purchase.about.option) > removed(options[0]!) ? 'hottest' : 'coldest';
}
