import { powerRatioToDb } from '#compute';
import { defaultState } from '../../address/field-spec.ts';
import { meanOf, powersAt, shareOf, supplyShares } from '../../sheet/keyed.ts';
import { type KeyedSlip, keyedSlip } from '../../sheet/keyed-slips.ts';
import { changeText, percentText } from '../../text/quantity-text.ts';
import { type KeyedState, keyedOf, keyedSpec } from '../../widgets/envelope/spec.ts';
import { share, watts } from '../../widgets/envelope/words.ts';

const db = (value: number): string => changeText('shown', { value, decimals: 2, unit: 'dB' });
const power = (value: number): string => watts('shown', value);

/** What a slip states, against what is true: `220 mW for 500 mW, −3.57 dB`. */
function cost(slip: KeyedSlip, state: KeyedState): string {
  const outcome = keyedSlip(slip, keyedOf(state));
  if (outcome === undefined)
    throw new RangeError(`powerValues: the slip must have something to go by, got ${slip}`);
  const { of, stated, truth, error } = outcome;
  const text = (value: number): string => (of === 'power' ? power(value) : share('shown', value));
  return `${text(stated)} for ${text(truth)}, ${db(error)}`;
}

/** Numbers of the lesson on which power is meant: the keyed transmitter of its figure. */
export function powerValues(): Readonly<Record<string, () => string>> {
  return { ...envelopeValues(), ...planeValues(), ...supplyValues() };
}

const prepared = (): KeyedState => defaultState(keyedSpec.fields);

/** Over time: peak, mean, and what stands between them. */
function envelopeValues() {
  const state = prepared();
  const down: KeyedState = { ...state, keying: 'keyDown' };
  const tones: KeyedState = { ...state, keying: 'twoEqualTones' };
  const dits: KeyedState = { ...state, keying: 'stringOfDits' };
  return {
    peak: () => power(state.peak),
    mean: () => power(meanOf(keyedOf(state))),
    paris: () => percentText('shown', { percent: 100 * shareOf('parisWord'), decimals: 0 }),
    parisDb: () => db(powerRatioToDb(shareOf('parisWord'))),
    dits: () => power(meanOf(keyedOf(dits))),
    tones: () => power(meanOf(keyedOf(tones))),
    half: () => db(powerRatioToDb(shareOf('twoEqualTones'))),
    meanAsPeak: () => cost('meanAsPeak', state),
    peakAsMean: () => cost('peakAsMean', state),
    twiceTheMean: () => cost('twiceTheMean', down),
    twiceKeyed: () => cost('twiceTheMean', state),
  };
}

/** At the socket and at the load, on the way and delivered; for the mean of the keyed transmitter. */
function planeValues() {
  const state = prepared();
  const mean = { ...keyedOf(state), power: meanOf(keyedOf(state)) };
  const [socket, load] = [powersAt('socket', mean), powersAt('load', mean)];
  return {
    incident: () => power(socket.incident),
    atLoad: () => power(load.incident),
    reflected: () => power(load.reflected),
    reflectedShare: () => share('shown', load.reflected / load.incident),
    reflectedDb: () => db(powerRatioToDb(load.delivered / load.incident)),
    delivered: () => power(load.delivered),
    forwardAtSocket: () => cost('forwardAtSocket', state),
  };
}

/** From the supply to the socket. */
function supplyValues() {
  const state = prepared();
  const down = supplyShares(keyedOf({ ...state, keying: 'keyDown' }));
  const keyed = supplyShares(keyedOf(state));
  if (down === undefined || keyed === undefined)
    throw new RangeError('powerValues: the supply must bring more than comes out, got less');
  return {
    input: () => power(down.input),
    heat: () => power(down.heat),
    efficiency: () => share('shown', down.efficiency),
    keyedInput: () => power(keyed.input),
    keyedHeat: () => power(keyed.heat),
    peakOverMean: () => cost('peakOverMean', state),
  };
}
