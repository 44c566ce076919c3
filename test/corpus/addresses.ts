import type { Kind } from './kinds.ts';

/** An address as somebody may have kept it, and what it must open. */
export interface KeptAddress {
  readonly kind: Kind;
  readonly version: number;
  /** What follows `?` or `#`. */
  readonly address: string;
  readonly opens: Readonly<Record<string, unknown>>;
}

/**
 * One address at least of every kind and version ever published. Lines are added and never changed or taken away: people
 * have these in their mail.
 */
export const addresses: readonly KeptAddress[] = [
  { kind: 'means', version: 1, address: 'a=9&b=10.5&c=11&v=1', opens: { first: 9, second: 10.5, third: 11 } },
  {
    kind: 'bands',
    version: 1,
    address: 'l=24&ev=v&d=0.5&p=3&cl=s&v=1',
    opens: { level: 24, even: 'volts', halfDb: 0.5, halfPercent: 3, claim: 'squared' },
  },
  {
    kind: 'signals',
    version: 1,
    address: 'a=10&b=7.5&ph=120&cl=1&v=1',
    opens: { first: 10, second: 7.5, phase: 120, claim: 'sumOfDbm' },
  },
  {
    kind: 'sum',
    version: 1,
    address: 't=3&t1x=7&t2k=g&t2x=-20.5&t3k=m&t3x=17&v=1',
    opens: {
      tiles: [
        { kind: 'level', value: 7 },
        { kind: 'gain', value: -20.5 },
        { kind: 'less', value: 17 },
      ],
    },
  },
  { kind: 'ratio', version: 1, address: 'db=6.02&sl=10&v=1', opens: { gainDb: 6.02, slip: 'tenForVolts' } },
  { kind: 'codec', version: 1, address: 'v=1', opens: { pad: -20, rule: 'simple', limit: 28.5 } },
  {
    kind: 'codec',
    version: 1,
    address: 'p=-6.5&n=12&r=0.25&u=&d=g&t=50-_3a9--Pad_2c-_20-left&o=7.1_a-_2d-7.2&v=1',
    opens: {
      pad: -6.5,
      repeats: 12,
      rating: 0.25,
      limit: undefined,
      rule: 'guardBand',
      title: '50 \u03a9 Pad, left',
      note: '7.1\n-7.2',
    },
  },
  {
    kind: 'codec',
    version: 1,
    address: 'l=3&l1n=20-dB-pad&l1g=20&l2n=3-m-of-coax&l2g=0.1&l2f=u&v=1',
    opens: {
      links: [
        { label: '20 dB pad', lossDb: 20, form: 'limits' },
        { label: '3 m of coax', lossDb: 0.1, form: 'expanded' },
        { label: '', lossDb: 0, form: 'limits' },
      ],
    },
  },
  { kind: 'codec', version: 1, address: 'l=0&v=1', opens: { links: [] } },
  {
    kind: 'bench',
    version: 1,
    address:
      't=Two-pads-into-a-receiver&p=at-the-transmitter_2019-s-socket_2c--into-50-_3a9-&c=28.2-MHz_2c--key-down_2c--pads-at-room-temperature&n=27-dBm&a=1.5&lo=25.5-dBm&up=28.5-dBm&r=guard&m=-13.4-dBm_a-_2212-13_2c-5&d=0-dBm&l=3&l1n=Receiver_2019-s-level-display&l1y=meter&l1a=2&l1s=judge&l2n=Mismatch&l2y=mis&l2f=ush&l2a=0.2&l2s=judge&l3n=First-20-dB-pad&l3y=pad&l3l=20&l3f=exp&l3a=0.5&l3k=2.1&l3u=pp&l3o=t&l3r=1-W&v=1',
    opens: {
      title: 'Two pads into a receiver',
      power: 'carrier',
      specification: 'around',
      nominal: '27 dBm',
      rule: 'guardBand',
      multiplier: '1',
      readings: '-13.4 dBm\n\u221213,5',
      links: [
        {
          label: 'Receiver\u2019s level display',
          kind: 'meter',
          loss: '0',
          form: 'rectangular',
          amount: '2',
        },
        { label: 'Mismatch', kind: 'mismatch', form: 'arcsine', amount: '0.2', source: 'judged' },
        {
          label: 'First 20 dB pad',
          loss: '20',
          form: 'expanded',
          amount: '0.5',
          factor: '2.1',
          unit: 'percentOfPower',
          percentOf: 'trueValue',
          rated: '1 W',
        },
      ],
    },
  },
  {
    kind: 'club',
    version: 1,
    address: 'na=0.01&la=0.05&me=1&mi=0.2&pa=0.1&co=0&en=0&cu=1&v=1',
    opens: {
      national: 0.01,
      laboratory: 0.05,
      meter: 1,
      mismatch: 0.2,
      pad: 0.1,
      coax: 0,
      showLimits: 'off',
      showCurve: 'on',
    },
  },
  {
    kind: 'club',
    version: 1,
    address: 'r=2&r1n=Second-pad&r1a=0.5&r2n=Lent-meter&r2f=u&r2a=0.3&o=me-pa&v=1',
    opens: {
      own: [
        { name: 'Second pad', form: 'limits', amount: 0.5 },
        { name: 'Lent meter', form: 'expanded', amount: 0.3 },
      ],
      out: 'me pa',
    },
  },
  { kind: 'club', version: 1, address: 'v=1', opens: { meter: 0.25, pad: 0.5, showLimits: 'on' } },
  {
    kind: 'rules',
    version: 1,
    address: 'le=1500&fi=-0.06&se=0.1&st=01&kn=c&v=1',
    opens: { length: 1500, first: -0.06, second: 0.1, step: 'tenth', known: 'compared' },
  },
  {
    kind: 'meter',
    version: 1,
    address: 're=-20&mo=36&tr=a&pe=0.2&v=1',
    opens: { reading: -20, months: 36, treatment: 'adjusted', permissible: 0.2 },
  },
  {
    kind: 'two-pads',
    version: 1,
    address: 're=0.3&mi=0.1&ca=0.05&se=0.1&fi=0.2&en=0&cu=1&v=1',
    opens: {
      receiver: 0.3,
      mismatch: 0.1,
      cable: 0.05,
      second: 0.1,
      first: 0.2,
      showLimits: 'off',
      showCurve: 'on',
    },
  },
  {
    kind: 'trace',
    version: 1,
    address: 'pp=20&r=75&w=q&sl=al&v=1',
    opens: { peakToPeak: 20, load: 75, wave: 'square', slip: 'assumedLoad' },
  },
  {
    kind: 'line',
    version: 1,
    address: 'l=30&am=3&fp=10&co=0.5&sp=6&d=10&w=s&sl=t&v=1',
    opens: { level: 30, amplifier: 3, first: 10, second: 6, damage: 10, without: 'second', slip: 'twice' },
  },
  {
    kind: 'line',
    version: 1,
    address: 'e=a&co=0.6&ag=5&ao=d&v=1',
    opens: { end: 'antenna', coax: 0.6, antenna: 5, over: 'halfWaveDipole' },
  },
  {
    kind: 'keyed',
    version: 1,
    address: 'k=t&p=2&m=p&pl=l&de=d&co=1&sw=2&u=13.8&i=0.5&sl=mp&v=1',
    opens: {
      keying: 'twoEqualTones',
      peak: 2,
      kind: 'peakEnvelope',
      plane: 'load',
      delivery: 'delivered',
      slip: 'meanAsPeak',
    },
  },
];
