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
  { kind: 'levelTable', version: 1, address: 'r=75&v=1', opens: { resistance: 75 } },
  {
    kind: 'pads',
    version: 1,
    address: 're=10&mo=9.5&pa=6&wi=0.1&sp=1.1&so=2&sm=1.25&v=1',
    opens: { reading: 10, moved: 9.5, pad: 6, within: 0.1, padSwr: 1.1, source: 2, meter: 1.25 },
  },
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
  {
    kind: 'verdict',
    version: 1,
    address: 'it=r&mu=0.25&rr=1500.12&rs=0.1&v=1',
    opens: { item: 'resistors', rule: 'guardBand', multiplier: 0.25, resistor: 1500.12, resistorSpread: 0.1 },
  },
  {
    kind: 'spend',
    version: 1,
    address: 'li=r&re=28&pa=0.1&sc=0.2&n=12&v=1',
    opens: { link: 'readings', level: 28, pad: 0.1, scatter: 0.2, count: 12, meter: 0.25 },
  },
  {
    kind: 'verdict',
    version: 1,
    address: 'ru=p&pr=99&re=27.8&ex=0.5&lo=25&up=29&sp=1&v=1',
    opens: {
      item: 'transmitter',
      rule: 'probability',
      required: 99,
      reading: 27.8,
      expanded: 0.5,
      lower: 25,
    },
  },
  {
    kind: 'back',
    version: 1,
    address: 'l=30&s=2.5&a=3&m=t&d=30&v=1',
    opens: { level: 30, swr: 2.5, loss: 3, match: 'tuner', directivity: 30 },
  },
  {
    kind: 'scope',
    version: 1,
    address: 'pp=20.4&r=75&e=t&f=29&b=200&p=6&g=5&o=f&s=40&v=1',
    opens: {
      peakToPeak: 20.4,
      load: 75,
      end: 'twoLoads',
      frequency: 29,
      scope: 200,
      probe: 6,
      gain: 5,
      gainOf: 'fullScale',
      screen: 40,
    },
  },
  {
    kind: 'detector',
    version: 1,
    address: 'de=0.6&dr=0.4&kn=0.03&fr=c&r=75&ha=-40&v=1',
    opens: { detected: 0.6, drop: 0.4, known: 0.03, from: 'curve', load: 75, harmonics: -40 },
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
      rule: 'guardBand',
      multiplier: '1',
      points: [{ specification: 'around', nominal: '27 dBm', readings: '-13.4 dBm\n\u221213,5' }],
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
    kind: 'bench',
    version: 2,
    address:
      't=The-club_2019-s-hidden-transmitter&w=mean&k=paris&p=at-the-transmitter_2019-s-socket_2c--into-50-_3a9-&c=3.58-MHz_2c--key-down_2c--12.0-V-supply_2c--after-five-minutes_2019--warm_2d-up&r=guard&sh=p&fl=-60-dBm&la=20&d=20-dBm&rb=the-club_2019-s-measuring-evening&rd=2026_2d-05_2d-09&ri=meter-no.-3-of-the-neighbouring-club_2c--pad-A_2c--coax-7&rc=meter_3a--data-sheet_3b--comparisons_3a--as-stated-_28-all-invented_29-&rs=12.0-V&rt=21-_b0-C&x=2&x1f=3.58-MHz&x1n=27-dBm&x1a=1.5&x1lo=25.5-dBm&x1up=28.5-dBm&x1m=7-dBm&x1ok=y&x2t=Low-power&x2f=3.58-MHz&x2s=un&x2n=27-dBm&x2a=1.5&x2ab=1&x2be=2&x2lo=25.5-dBm&x2up=28.5-dBm&x2m=4_a-4_2c-1-dBm&l=7&l1n=National-standard&l1y=comp&l1f=exp&l1a=0.02&l1s=cert&l2n=Calibration-laboratory&l2y=comp&l2f=exp&l2a=0.06&l2s=cert&l3n=The-meter-that-was-lent&l3y=meter&l3a=0.25&l4n=Mismatch&l4y=mis&l4f=ush&l4a=0.16&l4s=judge&l5n=20-dB-pad&l5y=pad&l5l=20&l5a=0.5&l5r=1-W&l6n=3-m-of-thin-coax&l6y=cable&l6l=0.1&l6a=0.05&l7n=Spread-of-the-transmitter&l7y=tx&l7a=0.1&l7s=judge&l7z=supply&l7m=a&l7b=25&l7x=y&ld=2026_2d-05_2d-09T10_3a-00_3a-00.000Z&z=2&z1a=2026_2d-05_2d-09T10_3a-20_3a-00.000Z&z1w=point1&z1f=27-dBm-_b1--1.5-dB&z1t=27-dBm-_b1--1-dB&z1r=slip-of-the-pen&z2a=2026_2d-05_2d-09T10_3a-21_3a-00.000Z&z2w=rule&z2f=simple-acceptance&z2t=guard-band-of-1-_d7--U&oa=-60-dBm&ol=0.01&na=7.0_a-7.1_a-7.0&hb=-40&v=2',
    opens: {
      method: 'padsIntoMeter',
      shows: 'peakEnvelope',
      power: 'mean',
      keying: 'parisWord',
      floor: '-60 dBm',
      by: 'the club\u2019s measuring evening',
      temperature: '21 \u00b0C',
      points: [
        { frequency: '3.58 MHz', nominal: '27 dBm', tolerance: '1.5', readings: '7 dBm', read: 'yes' },
        {
          label: 'Low power',
          specification: 'uneven',
          above: '1',
          below: '2',
          readings: '4\n4,1 dBm',
          read: 'no',
        },
      ],
      lockedAt: '2026-05-09T10:00:00.000Z',
      changes: [
        { what: 'point1', from: '27 dBm \u00b1 1.5 dB', to: '27 dBm \u00b1 1 dB', reason: 'slip of the pen' },
        { at: '2026-05-09T10:21:00.000Z', what: 'rule', to: 'guard band of 1 \u00d7 U', reason: '' },
      ],
      off: '-60 dBm',
      reconnections: '7.0\n7.1\n7.0',
      secondHarmonic: '-40',
    },
  },
  {
    kind: 'bench',
    version: 2,
    address:
      't=The-club_2019-s-hidden-transmitter&p=at-the-transmitter_2019-s-socket_2c--into-50-_3a9-&c=3.58-MHz_2c--key-down_2c--12.0-V-supply_2c--after-five-minutes_2019--warm_2d-up&r=prob&q=99&h=scope&ro=49.8-ohm&bs=100-MHz&bp=150-MHz&tm=n&lp=300-V&rb=the-club_2019-s-measuring-evening&rd=2026_2d-05_2d-09&ri=meter-no.-3-of-the-neighbouring-club_2c--pad-A_2c--coax-7&rc=meter_3a--data-sheet_3b--comparisons_3a--as-stated-_28-all-invented_29-&rs=12.0-V&rt=21-_b0-C&x=1&x1f=3.58-MHz&x1s=lic&x1n=27-dBm&x1a=1.5&x1lo=25.5-dBm&x1up=1-W&x1m=14.1_a-14.2_a-14.2&l=6&l1n=Gain-of-the-oscilloscope&l1y=meter&l1a=3&l1u=pv&l2n=Flatness-with-frequency&l2y=meter&l2a=0.1&l2s=judge&l3n=Reading-the-trace&l3y=meter&l3a=0.2&l3u=vpp&l3s=judge&l4n=Harmonics&l4a=0.09&l4s=judge&l5n=Load-resistance&l5a=1&l5u=pr&l5s=meas&l6n=What-the-probe-takes&l6f=lop&l6lo=0&l6up=0.05&l6s=judge&v=2',
    opens: {
      method: 'oscilloscope',
      load: '49.8 ohm',
      scopeBandwidth: '100 MHz',
      probeBandwidth: '150 MHz',
      terminated: 'no',
      largestPeak: '300 V',
      rule: 'probability',
      required: '99',
      points: [{ specification: 'licence', highest: '1 W', readings: '14.1\n14.2\n14.2' }],
    },
  },
  {
    kind: 'bench',
    version: 2,
    address:
      't=The-club_2019-s-hidden-transmitter&p=at-the-transmitter_2019-s-socket_2c--into-50-_3a9-&c=3.58-MHz_2c--key-down_2c--12.0-V-supply_2c--after-five-minutes_2019--warm_2d-up&r=guard&h=det&ro=49.8-ohm&vd=0.55-V&cu=y&lr=70-V&rb=the-club_2019-s-measuring-evening&rd=2026_2d-05_2d-09&ri=meter-no.-3-of-the-neighbouring-club_2c--pad-A_2c--coax-7&rc=meter_3a--data-sheet_3b--comparisons_3a--as-stated-_28-all-invented_29-&rs=12.0-V&rt=21-_b0-C&x=1&x1f=3.58-MHz&x1s=lim&x1n=27-dBm&x1a=1.5&x1lo=400-mW&x1up=600-mW&x1m=6.54_a-6.53_a-6.53&l=4&l1n=Voltmeter&l1y=meter&l1f=sum&l1u=v&l1e=0.5&l1i=2&l1j=0.01&l2n=Diode-drop&l2y=meter&l2a=0.1&l2u=v&l2s=judge&l3n=Harmonics&l3a=0.28&l3s=judge&l4n=Load-resistance&l4a=1&l4u=pr&l4s=meas&l4be=0.5&l4as=y&v=2',
    opens: {
      method: 'peakDetector',
      drop: '0.55 V',
      curve: 'yes',
      largestReverse: '70 V',
      points: [{ specification: 'between', lowest: '400 mW', highest: '600 mW' }],
      links: [
        { label: 'Voltmeter', form: 'terms', unit: 'volts', ofReading: '0.5', digits: '2', step: '0.01' },
        { label: 'Diode drop', unit: 'volts', amount: '0.1', assumed: 'no' },
        { label: 'Harmonics' },
        { label: 'Load resistance', unit: 'percentOfResistance', better: '0.5', assumed: 'yes' },
      ],
    },
  },
  {
    kind: 'bench',
    version: 2,
    address:
      't=The-club_2019-s-hidden-transmitter&y=inc&p=at-the-transmitter_2019-s-socket_2c--into-50-_3a9-&c=3.58-MHz_2c--key-down_2c--12.0-V-supply_2c--after-five-minutes_2019--warm_2d-up&r=guard&h=line&ff=1-W&fp=5&rf=1-W&rp=5&rb=the-club_2019-s-measuring-evening&rd=2026_2d-05_2d-09&ri=meter-no.-3-of-the-neighbouring-club_2c--pad-A_2c--coax-7&rc=meter_3a--data-sheet_3b--comparisons_3a--as-stated-_28-all-invented_29-&rs=12.0-V&rt=21-_b0-C&x=1&x1f=3.58-MHz&x1s=min&x1n=27-dBm&x1a=1.5&x1lo=26-dBm&x1up=28.5-dBm&x1m=0.51&x1r=0.01&l=1&l1n=Directivity&l1y=mis&l1f=swr&l1a=0.1&l1s=judge&l1ss=1.5&l1sl=1_2c-2&v=2',
    opens: {
      method: 'inLine',
      delivery: 'incident',
      forwardScale: '1 W',
      forwardPercent: '5',
      reflectedScale: '1 W',
      reflectedPercent: '5',
      points: [{ specification: 'atLeast', lowest: '26 dBm', readings: '0.51', reflected: '0.01' }],
      links: [{ label: 'Directivity', form: 'swr', sourceSwr: '1.5', loadSwr: '1,2' }],
    },
  },
  {
    kind: 'bench',
    version: 2,
    address:
      't=The-club_2019-s-hidden-transmitter&y=load&p=at-the-transmitter_2019-s-socket_2c--into-50-_3a9-&c=3.58-MHz_2c--key-down_2c--12.0-V-supply_2c--after-five-minutes_2019--warm_2d-up&r=guard&e=0.05&f=10&h=dc&ro=49.8-ohm&rb=the-club_2019-s-measuring-evening&rd=2026_2d-05_2d-09&ri=meter-no.-3-of-the-neighbouring-club_2c--pad-A_2c--coax-7&rc=meter_3a--data-sheet_3b--comparisons_3a--as-stated-_28-all-invented_29-&rs=12.0-V&rt=21-_b0-C&x=1&x1f=3.58-MHz&x1s=max&x1n=27-dBm&x1a=1.5&x1lo=25.5-dBm&x1up=28.5-dBm&x1m=9.5_9-9.4_9-5_9-0.1_a-9.6_9-9.5_9-5_9-0.1&l=5&l1n=Voltmeter&l1y=meter&l1f=sum&l1u=pdv&l1e=0.5&l1i=2&l1j=10-mV&l1pk=0.05&l1td=8&l1py=0.1&l1yr=2&l2n=Ammeter&l2y=meter&l2a=1&l2u=pda&l3n=Thermometer-with-RF&l3y=meter&l3a=0.1&l3u=kr&l3s=judge&l4n=Thermometer-with-DC&l4y=meter&l4a=0.1&l4u=kd&l4s=judge&l5n=Unequal-loss-of-heat&l5a=1&l5u=pp&l5s=judge&v=2',
    opens: {
      method: 'dcSubstitution',
      delivery: 'delivered',
      scatter: '0.05',
      repeats: '10',
      points: [{ specification: 'atMost', readings: '9.5\t9.4\t5\t0.1\n9.6\t9.5\t5\t0.1', volts: '' }],
      links: [
        {
          form: 'terms',
          unit: 'percentOfDcVolts',
          step: '10 mV',
          perKelvin: '0.05',
          coldest: '18',
          temperature: '8',
          perYear: '0.1',
          years: '2',
        },
        { unit: 'percentOfDcAmperes' },
        { unit: 'kelvinRf' },
        { unit: 'kelvinDc' },
        { label: 'Unequal loss of heat' },
      ],
    },
  },
  {
    kind: 'bench',
    version: 3,
    address:
      'zip=Xypz28ogz2G1kbiDRe8Ciz1nHcs1HXvQ0Ja7s19IytyKm7iclZabz1iMWEelS26EC1gOq4lpi9VXYKcWZ6oKb0ekz1V6NwA0Md0aebC35EJ37cez2cM99ph5gEUPvjS44Hi4q5IvF8UJN7lDAs1AZV7DeUCuUxoRmAs2G6vJ0WCz0SMs2SoJm965f2g09MUHFUZZUZIZoxEoIo0UQyWDGz2OSSPjfo6AdMHtm8aRhe2CGW00&v=3',
    opens: {
      method: 'padsIntoMeter',
      shows: 'peakEnvelope',
      power: 'mean',
      keying: 'parisWord',
      floor: '-60 dBm',
      by: 'the club\u2019s measuring evening',
      points: [
        { frequency: '3.58 MHz', nominal: '27 dBm', tolerance: '1.5', readings: '7 dBm', read: 'yes' },
        { label: 'Low power', specification: 'uneven', above: '1', below: '2', readings: '4\n4,1 dBm' },
      ],
      lockedAt: '2026-05-09T10:00:00.000Z',
      changes: [
        { what: 'point1', from: '27 dBm \u00b1 1.5 dB', to: '27 dBm \u00b1 1 dB', reason: 'slip of the pen' },
        { at: '2026-05-09T10:21:00.000Z', what: 'rule', to: 'guard band of 1 \u00d7 U', reason: '' },
      ],
      reconnections: '7.0\n7.1\n7.0',
    },
  },
  {
    kind: 'bench',
    version: 3,
    address:
      't=The-club_2019-s-hidden-transmitter&p=at-the-transmitter_2019-s-socket_2c--into-50-_3a9-&c=3.58-MHz_2c--key-down_2c--12.0-V-supply_2c--after-five-minutes_2019--warm_2d-up&r=prob&q=99&h=scope&ro=49.8-ohm&bs=100-MHz&bp=150-MHz&tm=n&lp=300-V&rb=the-club_2019-s-measuring-evening&rd=2026_2d-05_2d-09&ri=meter-no.-3-of-the-neighbouring-club_2c--pad-A_2c--coax-7&rc=meter_3a--data-sheet_3b--comparisons_3a--as-stated-_28-all-invented_29-&rs=12.0-V&rt=21-_b0-C&x=1&x1f=3.58-MHz&x1s=lic&x1n=27-dBm&x1a=1.5&x1lo=25.5-dBm&x1up=1-W&x1m=14.1_a-14.2_a-14.2&l=6&l1n=Gain-of-the-oscilloscope&l1y=meter&l1a=3&l1u=pv&l2n=Flatness-with-frequency&l2y=meter&l2a=0.1&l2s=judge&l3n=Reading-the-trace&l3y=meter&l3a=0.2&l3u=vpp&l3s=judge&l4n=Harmonics&l4a=0.09&l4s=judge&l5n=Load-resistance&l5a=1&l5u=pr&l5s=meas&l6n=What-the-probe-takes&l6f=lop&l6lo=0&l6up=0.05&l6s=judge&v=3',
    opens: {
      method: 'oscilloscope',
      load: '49.8 ohm',
      terminated: 'no',
      points: [{ specification: 'licence', highest: '1 W', readings: '14.1\n14.2\n14.2' }],
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
    kind: 'blocks',
    version: 1,
    address: 'ts=23.5&tb=21&wa=e&kn=s&n=4&a=0.2&b=-0.1&c=0&d=0.05&e=-0.2&of=0.08&gs=9.5&gb=23.1&v=1',
    opens: {
      stackC: 23.5,
      singleC: 21,
      counted: 'each',
      known: 'shared',
      count: 4,
      first: 0.2,
      second: -0.1,
      third: 0,
      fourth: 0.05,
      single: -0.2,
      off: 0.08,
      stackPpm: 9.5,
      singlePpm: 23.1,
    },
  },
  {
    kind: 'units',
    version: 1,
    address: 'u=o&uw=f&uv=f&uo=f&ua=f&uj=o&un=o&uk=o&um=o&us=o&l=30&kn=0.5&r=75&cu=c&v=1',
    opens: {
      root: 'ohm',
      watt: 'folded',
      volt: 'folded',
      ohm: 'folded',
      ampere: 'folded',
      joule: 'open',
      newton: 'open',
      kilogram: 'open',
      metre: 'open',
      second: 'open',
      level: 30,
      half: 0.5,
      load: 75,
      counted: 'crest',
    },
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
  {
    kind: 'shared',
    version: 1,
    address: 'of=d&ow=0.1&sh=1&v=1',
    opens: { of: 'difference', own: 0.1, shared: 1, counted: 100 },
  },
  { kind: 'shared', version: 1, address: 'of=x&co=50&v=1', opens: { of: 'X', counted: 50 } },
  {
    kind: 'borrow',
    version: 1,
    address:
      'o=Our-meter&l=Meter-of-the-neighbours&d=2026_2d-05_2d-09&a=0.20&k=2.1&r=0.05&t=0.1&m=0.1&cl=1&b=7.90&ba=7.1&bt=0.1&s=0.05&n=9&w=f&q=2&q1a=3.58&q1m=7.45_3b--8.04_3b--7.25_a-7.30_3b--8.02_3b--7.36&q2a=14.2-MHz&q2m=7_a-8_a-7&v=1',
    opens: {
      kind: 'alternation',
      along: 'frequency',
      stated: 'expanded',
      own: 'Our meter',
      amount: '0.20',
      factor: '2.1',
      later: '7.90',
      laterAt: '7.1',
      repeats: '9',
      places: [
        { at: '3.58', readings: '7.45; 8.04; 7.25\n7.30; 8.02; 7.36' },
        { at: '14.2 MHz', readings: '7\n8\n7' },
      ],
    },
  },
  {
    kind: 'borrow',
    version: 1,
    address: 'y=dc&p=10-dB-pad&vi=3.000-V&vo=0.948-V&pc=0.5&st=1-mV&om=n&rt=1&pr=0.25-W&f=lim&v=1',
    opens: {
      kind: 'dc',
      part: '10 dB pad',
      voltsIn: '3.000 V',
      oneMeter: 'no',
      load: '50',
      stated: 'rectangular',
    },
  },
  {
    kind: 'compare',
    version: 1,
    address:
      's=2&s1a=t_3d-A_26-x_3d-1_26-v_3d-2&s1p=2&s2a=t_3d-B_26-x_3d-1_26-v_3d-2&w=1&w1n=Same-pad&x=1&x1n=laboratory&v=1',
    opens: {
      rows: [
        { address: 't=A&x=1&v=2', point: '2' },
        { address: 't=B&x=1&v=2', point: '' },
      ],
      same: [{ name: 'Same pad' }],
      apart: [{ name: 'laboratory' }],
    },
  },
  {
    kind: 'shape',
    version: 1,
    address: 'n=4&co=95&sz=u&a=10&b=1&c=1&d=1&ds=t&v=1',
    opens: { count: 4, coverage: 'ninetyFive', sizes: 'standard', first: 10, fourthShape: 'triangular' },
  },
  {
    kind: 'stated',
    version: 1,
    address: 'me=w&ha=0.2&sl=r&v=1',
    opens: { meaning: 'wave', halfWidth: 0.2, slip: 'rootThree' },
  },
  {
    kind: 'tries',
    version: 1,
    address: 'm=l&x=10&r=0.9&tr=s&iv=s&co=99&or=2&sd=7&v=1',
    opens: {
      model: 'loss',
      reflection: 10,
      correlation: 0.9,
      trials: 'settled',
      interval: 'shortest',
      coverage: 'ninetyNine',
      order: 'second',
      seed: 7,
    },
  },
  {
    kind: 'row',
    version: 1,
    address: 'n=8&pa=0.1&be=u&mt=1&ms=c&cl=r&v=1',
    opens: { count: 8, pad: 0.1, between: 'arcsine', meter: 1, says: 'certificate', claim: 'root' },
  },
];
