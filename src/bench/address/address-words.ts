/**
 * What pairs of a sheet's address often say, the most likely last: what both sides know need not be sent. Not a letter of it may
 * change, since every packed address of version 3 is unfolded with it; a later version may have words of its own.
 */
export const wordsOfVersion3 = (): string =>
  [
    '&sa=7.0-dBm&sb=-3.0-dBm&sp=10&sl=0.1&oa=-60-dBm&ol=0.01&na=7.0_a-7.1_a-7.0&nl=0.1&um=0_a-5_a-10&ul=7.0_a-7.0&ua=0.1&hb=-40&hc=-50&hl=0.1',
    '&ld=2026_2d-05_2d-09T10_3a-00_3a-00.000Z&z=1&z1a=2026_2d-05_2d-09T10_3a-20_3a-00.000Z&z1w=point1&z1f=27-dBm-_b1--1.5-dB&z1t=27-dBm-_b1--1-dB&z1r=',
    'z2w=rule&z2f=simple-acceptance&z2t=guard-band-of-1-_d7--U&w=pep&w=mean&y=load&k=paris&k=dits&k=tones&k=steady&r=prob&q=99&g=1.5&e=0.02&f=10',
    'Receiver-Attenuator-Adapter-Connector-Power-sensor-Multimeter-Dummy-load-Directional-coupler-Antenna-Amplifier-Temperature-Drift-Noise-Resolution',
    '&h=dc&x1m=9.5&x1k=9.4&x1e=5&x1i=0.1&l=5&l1n=Voltmeter&l1y=meter&l1a=0.5&l1u=pdv&l1as=y&l2n=Ammeter&l2y=meter&l2a=1&l2u=pda&l2as=y',
    '&l3n=Thermometer-with-RF&l3y=meter&l3a=0.1&l3u=kr&l3s=judge&l3as=y&l4n=Thermometer-with-DC&l4y=meter&l4a=0.1&l4u=kd&l4s=judge&l4as=y',
    '&l5n=Unequal-loss-of-heat&l5a=1&l5u=pp&l5s=judge&l5as=y',
    '&y=net&h=line&ff=1-W&fp=5&rf=1-W&rp=5&x1m=0.51&x1r=0.01&l=3&l1n=Frequency-response&l1y=meter&l1a=0.2&l1as=y',
    '&l2n=Directivity&l2y=mis&l2f=ush&l2a=0.1&l2s=judge&l2as=y&l3n=Reading-the-needle&l3y=meter&l3a=2&l3u=pp&l3s=judge&l3as=y',
    '&h=det&vd=0.55-V&lr=70-V&x1m=6.54_a-6.53_a-6.53&l=4&l1n=Voltmeter&l1y=meter&l1f=sum&l1u=v&l1e=0.5&l1i=2&l1j=0.01&l1as=y',
    '&l2n=Diode-drop&l2y=meter&l2a=0.1&l2u=v&l2s=judge&l2as=y&l3n=Harmonics&l3a=0.28&l3s=judge&l3as=y&l4n=Load-resistance&l4a=1&l4u=pr&l4s=meas&l4as=y',
    '&h=scope&ro=49.8-ohm&bs=100-MHz&bp=150-MHz&tm=n&lp=300-V&x1m=14.1_a-14.2_a-14.2&l=6&l1n=Gain-of-the-oscilloscope&l1y=meter&l1a=3&l1u=pv&l1as=y',
    '&l2n=Flatness-with-frequency&l2y=meter&l2a=0.1&l2s=judge&l2as=y&l3n=Reading-the-trace&l3y=meter&l3a=0.2&l3u=vpp&l3s=judge&l3as=y',
    '&l4n=Harmonics&l4a=0.09&l4s=judge&l4as=y&l5n=Load-resistance&l5a=1&l5u=pr&l5s=meas&l5as=y&l6n=What-the-probe-takes&l6f=lop&l6lo=0&l6up=0.05&l6s=judge&l6as=y',
    '&r=guard&x=1&l=5&l1n=Power-meter&l1y=meter&l1a=0.5&l1as=y&l2n=Mismatch-at-the-meter&l2y=mis&l2f=swr&l2s=judge&l2ss=1.5&l2sl=1.2&l2as=y',
    '&l3n=Connectors&l3y=cable&l3a=0.05&l3s=judge&l3as=y&l4n=Cable&l4y=cable&l4l=0.1&l4a=0.05&l4as=y&l5n=20-dB-pad&l5y=pad&l5l=20&l5a=0.5&l5as=y',
    '&x=2&x2f=7.03-MHz&x2s=max&x2n=27-dBm&x2a=1.5&x2lo=25.5-dBm&x2up=28.5-dBm&x2m=7.0-dBm_a-7.1-dBm_a-7.0-dBm&x2ok=y&x3f=14.06-MHz&x3n=',
    't=The-club_2019-s-hidden-transmitter&p=at-the-transmitter_2019-s-socket_2c--into-50-_3a9-&c=3.58-MHz_2c--key-down_2c--12.0-V-supply_2c--after-five-minutes_2019--warm_2d-up',
    '&r=guard&fl=-60-dBm&la=20-dBm&d=20-dBm&rb=the-club_2019-s-measuring-evening&rd=2026_2d-05_2d-09&ri=meter-no.-3-of-the-neighbouring-club_2c--pad-A_2c--coax-7',
    '&rc=meter_3a--data-sheet_3b--comparisons_3a--as-stated-_28-all-invented_29-&rs=12.0-V&rt=21-_b0-C&x=1&x1f=3.58-MHz&x1n=27-dBm&x1a=1.5&x1lo=25.5-dBm&x1up=28.5-dBm&x1m=7-dBm&x1ok=y',
    '&l=6&l1n=National-standard&l1y=comp&l1f=exp&l1a=0.02&l1s=cert&l2n=Calibration-laboratory&l2y=comp&l2f=exp&l2a=0.06&l2s=cert&l3n=The-meter-that-was-lent&l3y=meter&l3a=0.25',
    '&l4n=Mismatch&l4y=mis&l4f=ush&l4a=0.16&l4s=judge&l5n=20-dB-pad&l5y=pad&l5l=20&l5a=0.5&l5r=1-W&l6n=3-m-of-thin-coax&l6y=cable&l6l=0.1&l6a=0.05',
  ].join('');
