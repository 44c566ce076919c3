import { addGain, gainDb, heatInPad, type LevelDbm, levelDbm, levelToPower, type PowerW } from '#compute';
import { clubSheet } from './club.ts';

/** The highest level that the specification of the club's transmitter allows. */
export const clubUpperLevel = (): LevelDbm => levelDbm(clubSheet().specification.upper ?? Number.NaN);

/** What the club's pad takes away, by its limits. */
function lossOfPad(): { readonly least: number; readonly most: number } {
  const pad = clubSheet().links.find(({ id }) => id === 'pad');
  if (pad?.statement.form !== 'limits') throw new RangeError('lossOfPad: the pad must have limits, got none');
  const { halfWidth } = pad.statement;
  return { least: pad.lossDb - halfWidth, most: pad.lossDb + halfWidth };
}

/** The most that the pad may have to turn into heat: on the socket itself, at the upper limit, with its highest attenuation. */
export const clubPadHeat = (): PowerW =>
  heatInPad({ power: levelToPower(clubUpperLevel()), gain: gainDb(-lossOfPad().most) });

/** The most that may arrive behind the pad: nothing else in front of it, and its lowest attenuation. */
export const behindClubPad = (): LevelDbm =>
  addGain({ level: clubUpperLevel(), gain: gainDb(-lossOfPad().least) });
