/** A mistake that people make again and again. */
export interface Misconception {
  /** As in "This is: …". */
  readonly name: string;
  /** Track and slug of the lesson that cures it. */
  readonly cure: string;
  /** What to say to anybody who makes it, whatever the numbers. */
  readonly reply: string;
}

const RATIOS = 'decibels/ratios-that-add';
const LEVELS = 'decibels/levels-and-gains';
const PERCENT = 'decibels/a-decibel-is-not-a-percentage';
const VOLTS = 'decibels/volts-and-watts';
const POWERS = 'decibels/which-power';
const LINE = 'decibels/down-the-line';
const BACK = 'measuring/what-comes-back';
const SCOPE = 'measuring/oscilloscope-across-a-load';
const DETECTOR = 'measuring/peak-detector';
const PADS = 'measuring/pads-into-a-meter';
const IN_LINE = 'measuring/in-line-meter';
const DC_HEAT = 'measuring/radio-watts-from-dc-watts';
const JOINS = 'measuring/the-meter-joins-the-circuit';
const VERDICT = 'measuring/inside-outside-cant-tell';
const BORROW = 'measuring/borrowing-a-calibration';
const SPEND = 'measuring/where-to-spend';
const STATED = 'stacking/what-a-tolerance-says';
const WORST = 'stacking/worst-case';
const ANGLES = 'stacking/at-right-angles';
const SHAPE = 'stacking/the-whole-shape';
const READINGS = 'stacking/a-few-readings';
const SHARED = 'stacking/shared-causes';
const WRITING = 'stacking/writing-it-down';
const CHANGES = 'traceability/calibration-changes-nothing';
const CHAIN = 'traceability/the-chain-to-the-definition';
const COMPARING = 'traceability/measuring-is-comparing';
const BLOCKS = 'traceability/blocks-and-warm-hands';
const WATT = 'traceability/what-a-watt-is-made-of';

const of = (cure: string, name: string, reply: string): Misconception => ({ name, cure, reply });

/** Every mistake that a wrong answer of the bank comes from. */
export const MISCONCEPTIONS = {
  'ten-for-twenty': of(
    RATIOS,
    'ten times the logarithm of volts',
    'Decibels compare powers, and power goes as the square of the volts: across one resistance it is 20 lg of the voltages.',
  ),
  'twenty-for-ten': of(
    RATIOS,
    'twenty times the logarithm of watts',
    'Twenty times the logarithm is for voltages. Powers take ten times.',
  ),
  'ratio-as-db': of(
    RATIOS,
    'the ratio itself written as decibels',
    'That is how many times, with the wrong name behind it. Decibels are ten times its logarithm.',
  ),
  'difference-as-db': of(
    RATIOS,
    'a difference in watts written as decibels',
    'Decibels say how many times, not how many more.',
  ),
  'ten-per-doubling': of(
    RATIOS,
    'ten decibels for each doubling',
    'Ten decibels are ten times. Twice is about three.',
  ),
  'six-per-doubling': of(
    RATIOS,
    'six decibels for each doubling of power',
    'Six decibels are twice the volts, which is four times the power.',
  ),
  'one-step-short': of(RATIOS, 'one step too few', 'Count the steps again: one is missing.'),
  'one-step-more': of(RATIOS, 'one step too many', 'Count the steps again: there is one too many.'),
  'db-as-factor': of(
    RATIOS,
    'decibels taken as a factor',
    'The number of decibels is not how many times: ten of them are ten times, twenty a hundred.',
  ),
  'db-as-difference': of(
    RATIOS,
    'decibels taken off as if they were units of power',
    'Decibels are a ratio. They divide or multiply a power; they are not subtracted from it.',
  ),
  'factors-added': of(
    RATIOS,
    'factors added where they multiply',
    'Decibels add; the factors behind them multiply.',
  ),
  'sign-of-loss': of(
    LEVELS,
    'the sign of a loss turned round',
    'A pad or cable takes away: going down the line its decibels are subtracted, and going back up they are added.',
  ),
  'sign-of-gain': of(
    LEVELS,
    'the sign of a gain turned round',
    'An amplifier adds its decibels in the direction of the signal.',
  ),
  'link-left-out': of(
    LEVELS,
    'one link left out',
    'Every link on the way counts: go through the chain again, box by box.',
  ),
  'link-twice': of(
    LEVELS,
    'one link counted twice',
    'It is in the sum already, and it stands in the chain once.',
  ),
  'levels-added': of(
    LEVELS,
    'two levels added as numbers',
    'Levels in dBm stand for powers. Numbers of dBm do not add; the milliwatts do.',
  ),
  'unrelated-as-volts': of(
    LEVELS,
    'unrelated signals added as volts',
    'Volts add up like that only for one frequency in step. Unrelated signals add as powers.',
  ),
  'largest-only': of(
    LEVELS,
    'the weaker signal left out',
    'The stronger one does not swallow the other: their powers add.',
  ),
  'milliwatts-for-watts': of(
    LEVELS,
    'watts put where milliwatts belong',
    'dBm counts from one milliwatt. A watt is thirty decibels more.',
  ),
  'prefix-slip': of(
    LEVELS,
    'a prefix that is a thousand off',
    'The digits are right, the prefix is not: milli is a thousandth, micro a millionth.',
  ),
  'zero-is-nothing': of(
    LEVELS,
    'nought dBm taken for no power',
    'Nought decibels above a milliwatt is a milliwatt.',
  ),
  'negative-power': of(
    LEVELS,
    'a negative level taken for a negative power',
    'The minus says “less than a milliwatt”, nothing else.',
  ),
  'db-for-level': of(
    LEVELS,
    'dB written for a level',
    'dB alone is a ratio; without “relative to what” it is no level.',
  ),
  'dbm-for-ratio': of(
    LEVELS,
    'dBm written for a ratio',
    'dBm is a level above one milliwatt. A change or a gain is in dB.',
  ),
  'volts-percent': of(
    PERCENT,
    'the percentage of volts given for power',
    'That is how the volts change. Power changes about twice as much.',
  ),
  'power-percent': of(
    PERCENT,
    'the percentage of power given for volts',
    'That is how the power changes. The volts change about half as much.',
  ),
  'gain-for-loss': of(
    PERCENT,
    'the percentage of a gain given for a loss',
    'Up and down are not alike: what a gain adds is a larger share than what the same loss takes.',
  ),
  'loss-for-gain': of(
    PERCENT,
    'the percentage of a loss given for a gain',
    'Up and down are not alike: what a loss takes is a smaller share than what the same gain adds.',
  ),
  'lost-for-left': of(
    PERCENT,
    'what is lost given for what is left',
    'That is the other part of the whole: look again at which of the two is asked for.',
  ),
  'db-as-percent': of(
    PERCENT,
    'a decibel taken as a fixed percentage',
    'There is no fixed percentage for a decibel: for small ones it is about 23 % of power, and it does not add up.',
  ),
  'sum-for-mean': of(
    PERCENT,
    'a sum taken for a mean',
    'That is the sum of the two powers. The mean is half of it.',
  ),
  'symmetric-watts': of(
    PERCENT,
    'a band in decibels taken as even in watts',
    'What is even in decibels is lopsided in watts: the upper side is longer.',
  ),
  'mean-of-db': of(
    PERCENT,
    'levels averaged where the power itself varies',
    'The mean of the decibels stands for the geometric mean of the powers. A mean power is the mean of the milliwatts.',
  ),
  'vpp-as-vp': of(
    VOLTS,
    'peak to peak taken for peak',
    'From trough to crest is twice the peak: halve it first, or the power comes out four times too large.',
  ),
  'vp-as-vpp': of(
    VOLTS,
    'peak taken for peak to peak',
    'The peak counts from the middle: it has been halved once more than there is reason for.',
  ),
  'vpp-as-rms': of(
    VOLTS,
    'peak to peak taken for RMS',
    'That is eight times the power of the sine: RMS is the trough-to-crest height divided by 2√2.',
  ),
  'vp-as-rms': of(
    VOLTS,
    'peak taken for RMS',
    'The peak of a sine is √2 times its RMS, so the power comes out twice too large.',
  ),
  'rms-as-vp': of(
    VOLTS,
    'RMS taken for peak',
    'RMS is already what brings the power: it needs no further halving.',
  ),
  'half-only': of(
    VOLTS,
    'halved, but not made RMS',
    'Halving gives the peak. RMS is that divided by √2 again.',
  ),
  'root-two-wrong-way': of(
    VOLTS,
    'multiplied by √2 where it divides',
    'The peak is the larger one: from peak to RMS divide by √2, from RMS to peak multiply.',
  ),
  'average-for-rms': of(
    VOLTS,
    'the rectified mean taken for RMS',
    'That is the mean of the rectified sine, 2/π of its peak. Power goes with the mean of the square.',
  ),
  'not-squared': of(VOLTS, 'volts not squared', 'Power goes as the square of the volts: V²/R.'),
  'root-left-out': of(
    VOLTS,
    'the square root left out',
    'Power times resistance is volts squared. The root is still to be taken.',
  ),
  'percent-not-doubled': of(
    VOLTS,
    'the error of the volts carried over unchanged',
    'Volts enter squared: a small error of the volts counts about twice in the power.',
  ),
  'percent-squared': of(
    VOLTS,
    'the percentage squared',
    'The volts are squared, the percentage is not: a small error doubles.',
  ),
  'percent-halved': of(
    VOLTS,
    'the percentage halved where it doubles',
    'It is the other way: from power to volts it halves, from volts to power it doubles.',
  ),
  'load-assumed': of(
    VOLTS,
    'fifty ohms assumed',
    'The load is what it is: put its own resistance into V²/R.',
  ),
  'load-inverted': of(
    VOLTS,
    'the effect of the resistance turned round',
    'At given volts more ohms take less power.',
  ),
  'load-squared': of(
    VOLTS,
    'the resistance squared',
    'Only the volts are squared. The resistance enters once.',
  ),
  'carrier-factor': of(
    POWERS,
    'a factor put on a steady carrier',
    'The envelope of a steady carrier is flat: its peak envelope power and its mean are the same.',
  ),
  'pep-of-volts-peak': of(
    POWERS,
    'the crest of the volts taken for the crest of the envelope',
    'Peak envelope power is a mean, over one radio-frequency cycle at the crest of the envelope. It is not the largest instantaneous power.',
  ),
  'mean-is-pep': of(
    POWERS,
    'the mean taken for the peak envelope power',
    'The two are the same only while the envelope is flat.',
  ),
  'tones-three-quarters': of(
    POWERS,
    'the mean of two tones taken as that of a rectified wave',
    'Power goes with the square of the envelope, and the square of a sine has the mean one half.',
  ),
  'duty-twice': of(
    POWERS,
    'the keying counted twice',
    'The share of the time that the key is down counts once in the power. It is not squared.',
  ),
  'duty-on-volts': of(
    POWERS,
    'the keying put on the volts',
    'The mean power is the share of the time, not its root.',
  ),
  'duty-inverted': of(
    POWERS,
    'divided where the share multiplies',
    'A mean over the pauses can only be smaller than the power while the key is down.',
  ),
  'efficiency-inverted': of(
    POWERS,
    'input and output exchanged',
    'Efficiency is what comes out over what goes in, and never above one.',
  ),
  'heat-is-output': of(
    POWERS,
    'the output taken for the heat',
    'That part leaves by the socket. What stays inside is the rest.',
  ),
  'heat-is-input': of(
    POWERS,
    'the whole input taken for the heat',
    'A part of it leaves as radio-frequency power and does not warm the transmitter.',
  ),
  'volts-plus-amperes': of(
    POWERS,
    'volts and amperes added or divided',
    'Direct-current power is volts times amperes.',
  ),
  'dipole-for-isotropic': of(
    LINE,
    'dBd and dBi taken for one',
    'A half-wave dipole has 2.15 dB over the isotropic antenna: the two references differ by that.',
  ),
  'dipole-wrong-way': of(
    LINE,
    '2.15 dB counted the wrong way',
    'The same antenna has the larger number in dBi: a dipole is 2.15 dBi, and 0 dBd.',
  ),
  'gain-makes-power': of(
    LINE,
    'antenna gain taken for power made',
    'An antenna makes no power: it takes from other directions what it gives to one.',
  ),
  'left-for-heat': of(
    LINE,
    'what is left taken for the heat',
    'That is what comes out at the far end. The heat is the rest.',
  ),
  'heat-for-left': of(
    LINE,
    'the heat taken for what is left',
    'That stays in the pad. Asked for is what comes out.',
  ),
  'all-is-heat': of(
    LINE,
    'the whole power taken for the heat',
    'A part of it goes on to the next link and is no heat here.',
  ),
  'length-not-scaled': of(
    LINE,
    'the loss of the table’s length used as it is',
    'The table is for another length. Decibels of a cable go with its length.',
  ),
  'length-as-factor': of(
    LINE,
    'the ratio of powers scaled with length',
    'It is the decibels that go with the length, not the percentage.',
  ),
  'frequency-unscaled': of(
    LINE,
    'the loss taken as the same at every frequency',
    'Loss in a cable grows with frequency.',
  ),
  'frequency-linear': of(
    LINE,
    'the loss taken as proportional to frequency',
    'Mostly it is the skin of the conductor: about the root of the frequency.',
  ),
  'frequency-inverted': of(
    LINE,
    'less loss at the higher frequency',
    'It is the other way: a cable loses more at the higher frequency.',
  ),
  'power-for-amplitude': of(
    BACK,
    'the share of power taken for the reflection coefficient',
    'The reflection coefficient is a ratio of voltages: the root of the ratio of powers.',
  ),
  'amplitude-for-power': of(
    BACK,
    'the share of the volts taken for the share of power',
    'Powers go as the square of the reflection coefficient.',
  ),
  'swr-as-power-ratio': of(
    BACK,
    'a ratio of powers taken for the standing-wave ratio',
    'The standing-wave ratio compares the largest and smallest volts on the line: (1 + r)/(1 − r).',
  ),
  'swr-inverted': of(BACK, 'the ratio turned upside down', 'A standing-wave ratio is one or more.'),
  'swr-as-difference': of(
    BACK,
    'the difference of the resistances used',
    'It is a ratio that counts, not how many ohms there are between.',
  ),
  'return-loss-ten': of(
    BACK,
    'ten times the logarithm of the reflection coefficient',
    'The coefficient is of volts: twenty times its logarithm, or ten times that of its square.',
  ),
  'reflected-is-lost': of(
    BACK,
    'reflected power taken for lost power',
    'What comes back is reflected again at the transmitter’s end; what is lost is what warms the line.',
  ),
  'sum-for-net': of(
    BACK,
    'reflected power added to the forward power',
    'What comes back did not stay in the load: take it off.',
  ),
  'forward-is-net': of(
    BACK,
    'the forward power taken for what the load keeps',
    'A part of it comes back. The load keeps the difference.',
  ),
  'match-is-resistance': of(
    BACK,
    'a good match taken for an accurate power',
    'A match says how much comes back. It says nothing about the meter.',
  ),
  'match-everywhere': of(
    BACK,
    'a match at one place taken for a match all along the line',
    'A match holds at one place, looking one way. Beyond it the antenna reflects as before.',
  ),
  'mismatch-known': of(
    BACK,
    'mismatch treated as a known correction',
    'Its size follows from two reflections, its sign from a phase that nobody measured: it is a band.',
  ),
  'percent-of-reading': of(
    IN_LINE,
    'per cent of full scale taken as per cent of the reading',
    'The limit is a share of the whole scale and stays the same in watts down to its foot.',
  ),
  'range-is-better': of(
    IN_LINE,
    'the largest range taken for the safest reading',
    'The limit grows with the range: read on the smallest one that holds the power.',
  ),
  'drop-forgotten': of(
    DETECTOR,
    'the diode’s drop left out',
    'The capacitor stays below the crest by the diode’s drop: add it back before squaring.',
  ),
  'drop-subtracted': of(
    DETECTOR,
    'the diode’s drop taken off once more',
    'The diode has taken it off already. Going back to the crest it is added.',
  ),
  'detector-is-rms': of(
    DETECTOR,
    'the detector’s volts taken for RMS',
    'A peak detector shows the crest: V²/(2R), not V²/R.',
  ),
  'drop-is-fixed': of(
    DETECTOR,
    'one drop used at every level',
    'At low level the diode no longer follows the crest, and no fixed drop is right.',
  ),
  'detector-on-harmonics': of(
    DETECTOR,
    'the crest of a bent wave taken for its power',
    'Harmonics bend the crest far more than they change the power.',
  ),
  'termination-forgotten': of(
    SCOPE,
    'the load left out',
    'Without its load the source shows other volts than it would with it, and V²/R has no R.',
  ),
  'divide-by-four': of(
    SCOPE,
    'an open reading divided by four',
    'That holds for an ideal 50 ohm source. A transmitter is none, and keying it without a load may end it.',
  ),
  'bandwidth-is-enough': of(
    SCOPE,
    'a bandwidth above the frequency taken as enough',
    'At its bandwidth a trace is already 3 dB low, and it begins to fall long before.',
  ),
  'bandwidth-as-correction': of(
    SCOPE,
    'a correction for roll-off that nobody has measured',
    'That is one pole’s curve. Nobody has said that this front end is one pole.',
  ),
  'bandwidths-smaller-only': of(
    SCOPE,
    'the smaller bandwidth taken for both together',
    'Two of them in a row are slower than the slower one alone.',
  ),
  'bandwidths-added': of(SCOPE, 'bandwidths added', 'Two bottlenecks in a row are no wider than one.'),
  'probe-switch': of(
    SCOPE,
    'the probe’s divider and the setting not alike',
    'Ten in volts is a hundred in power: twenty decibels.',
  ),
  'probe-as-wire': of(
    JOINS,
    'the probe taken for a plain wire',
    'Its capacitance lies across the load and changes what it is connected to.',
  ),
  'loading-left-out': of(
    JOINS,
    'the meter’s own resistance left out',
    'The meter lies beside the resistor it measures and takes a part of the current.',
  ),
  'loading-on-both': of(
    JOINS,
    'the meter’s resistance put in series',
    'A voltmeter lies beside the part, not in the way of the current.',
  ),
  'loading-is-error': of(
    JOINS,
    'a changed circuit taken for a reading error',
    'The meter reads rightly; but what it reads is there only while the meter is.',
  ),
  'average-meter': of(
    JOINS,
    'an average-responding meter trusted on another wave',
    'Its scale is made for sines. On another form it is off by a fixed share.',
  ),
  'meter-frequency': of(
    JOINS,
    'a multimeter’s AC range trusted at radio frequency',
    'Most are specified to some kilohertz. Beyond that the display still shows digits, but of what?',
  ),
  'digits-are-accuracy': of(
    STATED,
    'digits taken for accuracy',
    'The last digit says how finely the display steps, not how near the value is.',
  ),
  'uncalibrated-level': of(
    PADS,
    'a receiver’s scale taken for dBm',
    'Until somebody has compared it with a known level, its zero is anywhere.',
  ),
  'pad-order': of(
    PADS,
    'the small pad put first',
    'The first pad takes nearly all of the heat: it is the one that must bear the power.',
  ),
  'pad-cures-all': of(
    PADS,
    'a pad taken as free of error',
    'A pad brings a tolerance and reflections of its own.',
  ),
  'heat-too-early': of(
    DC_HEAT,
    'read before the temperature has settled',
    'While it still rises the reading is of the time, not of the power.',
  ),
  'heat-no-ratio': of(
    DC_HEAT,
    'the two rises taken as equal',
    'The rises differ: the radio-frequency power goes with their ratio.',
  ),
  'heat-ratio-inverted': of(
    DC_HEAT,
    'the ratio of the rises turned upside down',
    'The larger rise belongs to the larger power.',
  ),
  'rss-for-worst': of(
    WORST,
    'the root of the squares given for the worst case',
    'That is an expectation, not a guarantee. In the worst case all limits are reached at once, and they add.',
  ),
  'worst-for-rss': of(
    ANGLES,
    'limits added where independent parts are combined',
    'That is what can be guaranteed. Independent parts seldom all err one way: their standard uncertainties combine as the root of the sum of the squares.',
  ),
  'uncertainties-averaged': of(
    ANGLES,
    'uncertainties averaged',
    'More parts never make a sum more certain: squares add up.',
  ),
  'largest-uncertainty': of(
    ANGLES,
    'only the largest part counted',
    'It leads, but the others are there too.',
  ),
  'root-of-count-only': of(
    ANGLES,
    'the root left out of the sum of squares',
    'Squares add up; at the end the root is taken.',
  ),
  'limit-as-u': of(
    STATED,
    'a limit taken for a standard uncertainty',
    'A limit is the edge. With nothing else known the standard uncertainty is the limit divided by √3.',
  ),
  'limit-halved': of(
    STATED,
    'a limit divided by two',
    'Dividing by two is for an expanded uncertainty with k = 2. A limit with nothing else known is divided by √3.',
  ),
  'root-two-for-three': of(
    STATED,
    'divided by √2 where √3 belongs',
    '√2 belongs to what swings between its limits and stays longest at the ends. Nothing else known is √3.',
  ),
  'root-three-for-two': of(
    STATED,
    'divided by √3 where √2 belongs',
    'A reflection of unknown phase spends most of its time near the ends: √2.',
  ),
  'full-width': of(
    STATED,
    'the whole width taken for the half',
    'Plus and minus give the half-width. From edge to edge is twice that.',
  ),
  'k-left-out': of(
    STATED,
    'an expanded uncertainty taken for a standard one',
    'U has its coverage factor in it: divide by k first.',
  ),
  'k-twice': of(STATED, 'the coverage factor counted twice', 'U has its k already.'),
  'k-forgotten': of(
    WRITING,
    'the coverage factor left off',
    'That is one standard uncertainty, which holds about two thirds. Expanded means times k.',
  ),
  'rss-of-limits-is-u': of(
    ANGLES,
    'the root of the squared limits quoted as if it were k = 2',
    'The root of the squared limits is √3 times u, not twice.',
  ),
  'tolerance-is-uncertainty': of(
    STATED,
    'tolerance, error and uncertainty taken for one',
    'A tolerance is what a property may be; an error is a difference; an uncertainty says how little you know.',
  ),
  'correlated-as-independent': of(
    SHARED,
    'a shared cause treated as chance',
    'What errs for the same reason errs together: those parts add as numbers, with their signs.',
  ),
  'independent-as-correlated': of(
    SHARED,
    'independent parts added as numbers',
    'That is for parts with one common cause. Independent ones combine at right angles.',
  ),
  'shared-cancels-always': of(
    SHARED,
    'a shared error taken to cancel everywhere',
    'It cancels in a difference or a ratio. In a sum it counts fully.',
  ),
  'normal-always': of(
    SHAPE,
    'every sum taken for a bell',
    'One dominant flat part makes a flat sum: two standard uncertainties then reach beyond what is possible.',
  ),
  'wrong-target': of(
    SPEND,
    'the smaller part improved',
    'Squares count: what is small already hardly shows in the sum.',
  ),
  'halved-part-halves': of(
    SPEND,
    'one part halved, the whole taken as halved',
    'Only that part’s square shrinks. The others stay.',
  ),
  'n-for-root-n': of(
    READINGS,
    'divided by the number of readings',
    'The scatter of a mean falls with the root of the number, not with the number.',
  ),
  'no-root-n': of(
    READINGS,
    'the scatter of one reading given for the mean',
    'A mean of several readings scatters less than one of them, by the root of their number.',
  ),
  'root-n-for-all': of(
    READINGS,
    'everything divided by √n',
    'Only the scatter shrinks. What is the same in all readings stays as large as it was.',
  ),
  'population-sd': of(
    READINGS,
    'divided by n where n − 1 belongs',
    'The mean is taken from the same readings: one of them is used up, n − 1 are left.',
  ),
  'range-as-sd': of(
    READINGS,
    'the whole span taken for the standard deviation',
    'From the smallest to the largest is more than a standard deviation, and grows with the number of readings.',
  ),
  'drop-odd-reading': of(
    READINGS,
    'a reading left out because it does not fit',
    'A reading needs a reason to go: find the loose connector, or keep it.',
  ),
  'reading-decides': of(
    VERDICT,
    'the reading judged without its band',
    'The value may lie anywhere in the band: judge with it.',
  ),
  'straddle-is-outside': of(
    VERDICT,
    'a band over the limit taken for outside',
    'A band over the limit shows neither: it can’t tell.',
  ),
  'straddle-is-inside': of(
    VERDICT,
    'a band over the limit taken for inside',
    'A part of it lies beyond: inside is not shown.',
  ),
  'guard-wrong-side': of(
    VERDICT,
    'the guard band put outside the limit',
    'To accept safely, stay inside: the acceptance limit lies within the tolerance limit.',
  ),
  'guard-half': of(
    VERDICT,
    'half of U kept as the guard band',
    'The rule keeps one whole U between itself and the limit.',
  ),
  'guard-double': of(
    VERDICT,
    'twice U kept as the guard band',
    'U is expanded already: one U is the guard band of this rule.',
  ),
  'rule-afterwards': of(
    VERDICT,
    'the rule chosen after the reading',
    'A rule chosen when the reading is known decides nothing: agree on it first.',
  ),
  'one-side-only': of(
    VERDICT,
    'one limit taken for both',
    'Look at which limit is near, and take only that tail.',
  ),
  'any-difference': of(
    VERDICT,
    'every difference taken for a disagreement',
    'Two results agree as long as they differ by no more than their uncertainties together explain.',
  ),
  'bands-must-touch': of(
    VERDICT,
    'uncertainties added as numbers for a comparison',
    'Independent uncertainties combine as the root of the sum of the squares, also for a difference.',
  ),
  'larger-only': of(
    VERDICT,
    'only the larger uncertainty used',
    'Both results are uncertain, and both count in their difference.',
  ),
  'too-many-digits': of(
    WRITING,
    'more digits than the uncertainty bears',
    'Digits below the second one of the uncertainty say nothing about the power.',
  ),
  'too-few-digits': of(
    WRITING,
    'rounded until something is lost',
    'Rounded so far the number itself is moved by a good part of its band.',
  ),
  'brackets-misread': of(
    WRITING,
    'the brackets read in the wrong place',
    'Digits in brackets count in the last places of the number before them.',
  ),
  'calibrated-is-adjusted': of(
    CHANGES,
    'calibration taken for adjustment',
    'A calibration compares and changes nothing; turning the screw is an adjustment.',
  ),
  'calibrated-is-right': of(
    CHANGES,
    'calibrated taken for right',
    'A calibration may find a meter far off, and say so with numbers. That is what it is for.',
  ),
  'verified-is-calibrated': of(
    CHANGES,
    'a pass taken for a calibration',
    'A verification says “within its limits”. A calibration gives the numbers.',
  ),
  'correction-sign': of(
    CHANGES,
    'the correction’s sign turned round',
    'The correction is reference minus indication, and it is added to the reading.',
  ),
  'correction-ignored': of(
    CHANGES,
    'a known error not corrected',
    'An error that is known is corrected. The band is for what is not known.',
  ),
  'offset-kept': of(
    CHANGES,
    'a corrected error kept in the band',
    'What has been corrected no longer belongs in the band; the uncertainty of the correction does.',
  ),
  'correction-is-exact': of(
    BORROW,
    'a correction taken as exact',
    'It came from a comparison, and carries the uncertainty of that.',
  ),
  'better-than-lender': of(
    BORROW,
    'better than what it was compared with',
    'No comparison is better than its reference: the lender’s uncertainty comes along.',
  ),
  'lender-only': of(
    BORROW,
    'only the lender’s uncertainty counted',
    'Your own scatter, resolution and drift come on top.',
  ),
  'drift-ignored': of(
    BORROW,
    'the drift between two readings left out',
    'Read yours before and after and take the mean: what moves steadily in between drops out.',
  ),
  'sticker-is-traceable': of(
    CHAIN,
    'a sticker taken for traceability',
    'Traceability is a documented chain of comparisons, each with its uncertainty. A sticker shows none of that.',
  ),
  'instrument-traceable': of(
    CHAIN,
    'traceability taken as a property of the instrument',
    'It belongs to a result: to this value, taken in this way.',
  ),
  'chain-gets-better': of(
    CHAIN,
    'the uncertainty taken to shrink down the chain',
    'Each comparison adds its own: downwards it can only grow.',
  ),
  'chain-stops-at-shop': of(
    CHAIN,
    'two like instruments taken as independent witnesses',
    'Compared with the same source they share its error, and agree in being wrong.',
  ),
  'exact-definition': of(
    WATT,
    'the definition taken as uncertain',
    'The constants of the definition are exact. What is uncertain is every way to realise it.',
  ),
  'word-mixed-up': of(
    COMPARING,
    'two words taken for one',
    'The trade keeps these words apart, because they answer different questions.',
  ),
  'accuracy-is-number': of(
    STATED,
    'accuracy given as a number',
    'Accuracy is a quality. A number needs the name of what it is: a maximum permissible error, or an uncertainty.',
  ),
  'one-power-only': of(
    POWERS,
    '“the power” taken as clear enough',
    'Mean or peak envelope, into what, at which socket: without that, two people measure two things.',
  ),
  'nominal-for-upper': of(
    PADS,
    'the nominal power taken for the largest',
    'Protection counts with the largest power that may come, and the smallest loss.',
  ),
  'pad-cannot-fail': of(
    PADS,
    'the pad taken as always there',
    'Work out what arrives if it is forgotten or fails.',
  ),
  'rms-for-rating': of(
    SCOPE,
    'the rating compared with the wrong volts',
    'The rating of an input says which volts it means: compare like with like.',
  ),
  'keyed-unloaded': of(
    SCOPE,
    'keyed without a load',
    'Without a load all of the power comes back to the last stage, and its volts may rise beyond what it bears.',
  ),
  'test-on-air': of(
    PADS,
    'an antenna used for testing',
    'Test into a dummy load: on the air it disturbs others, and needs a licence.',
  ),
  'low-power-is-harmless': of(
    JOINS,
    'low power taken for harmless',
    'A few watts at a point of high impedance burn deeply. Do not touch what is keyed.',
  ),
  'more-ohms-is-safer': of(
    JOINS,
    'a larger resistance taken for the safer load',
    'The load has to be the nominal resistance. What it needs more of is watts.',
  ),
  'earth-lifted': of(
    SCOPE,
    'the oscilloscope’s earth taken off',
    'The earth protects the person at the case. It stays on.',
  ),
  'clip-anywhere': of(
    SCOPE,
    'the ground clip taken for a free wire',
    'The clip is mains earth: clipped to anything else it is a short.',
  ),
  'site-gives-limits': of(
    POWERS,
    'an exposure limit looked for here',
    'Limits differ by country: ask your regulator. The station’s licensee has to assess it.',
  ),
  'switched-off-is-dead': of(
    JOINS,
    'switched off taken for discharged',
    'Capacitors hold their charge. That work belongs to trained people.',
  ),
  'hurry-at-the-bench': of(
    PADS,
    'reconnected with the key down',
    'Key off, make sure that there is no power, then reconnect.',
  ),
  'upside-down': of(
    RATIOS,
    'multiplied where it divides, or the other way',
    'Ask first whether the answer has to be larger or smaller than what you began with.',
  ),
  'added-for-subtracted': of(
    RATIOS,
    'added where it has to be taken off',
    'Think which way it goes: here the one is taken off the other.',
  ),
  'sign-mistaken': of(
    COMPARING,
    'a sign turned round',
    'Think which of the two is the larger one: that gives the sign.',
  ),
  'ends-exchanged': of(
    PERCENT,
    'the two ends of a band exchanged',
    'Down is the longer side in decibels, up the longer one in per cent and in watts.',
  ),
  'wrong-end': of(
    BORROW,
    'counted from the wrong end',
    'Count from the line that you begin with: near to it the answer is near to its value.',
  ),
  'nearest-line': of(
    BORROW,
    'the nearest line of a table taken as it is',
    'Between two lines of a table the straight line does better than either of them.',
  ),
  'middle-taken': of(BORROW, 'the middle of two values taken', 'Nothing says that it lies in the middle.'),
  'halved-difference': of(
    CHANGES,
    'half of a difference taken for the whole',
    'A difference counts as it is. There is nothing to share.',
  ),
  'from-nought': of(
    BLOCKS,
    'counted from nought instead of from the reference',
    'What counts is the distance from the reference, not from nought.',
  ),
  'wrong-danger': of(
    PADS,
    'the danger looked for in the wrong place',
    'Ask what can hurt somebody first, and what can be broken second.',
  ),
  'wrong-authority': of(PADS, 'the wrong authority asked', 'Rules, manuals and competent people come first.'),
  'side-by-side': of(
    JOINS,
    'what lies side by side taken for what lies in a row',
    'In a row resistances add. Side by side the conductances do, and the result is smaller than either.',
  ),
  'wave-not-sine': of(
    JOINS,
    'a formula for sines used on another wave',
    '√2 belongs to sines. For another wave ask what its square is on average.',
  ),
  'another-question': of(
    COMPARING,
    'the answer to another question',
    'True, perhaps, but that is not what was asked.',
  ),
} as const satisfies Readonly<Record<string, Misconception>>;

export type MisconceptionId = keyof typeof MISCONCEPTIONS;
