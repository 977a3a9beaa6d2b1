// What people asked about antenna lengths, rigging, whips and SWR, in our words, with the figures and units they had; shaped as
// feedline_questions.mjs says. Figures in metres where a result is a length: 1 ft = 0.3048 m, 1 in = 0.0254 m.
const ft = 0.3048, inch = 0.0254;

export const questions = [
  {
    id: 'a dipole moved down the band',
    ask: 'A 66 ft dipole resonates at 7150 kHz and should at 7010: how long must it be?',
    source: 'a mailing list of tower people, 2007; length times frequency stays: 67.3 ft, 8 in at each end',
    check: 'antenna.trim',
    inputs: { length_m: '66 ft', resonant_mhz: '7150 kHz', wanted_mhz: '7010kHz' },
    cases: [{ expect: { new_length_m: [67.3 * ft, 0.1 * ft], change_m: [1.32 * ft, 0.1 * ft], each_end_m: [8 * inch, 0.6 * inch] } }],
  },
  {
    id: 'six inches off an inverted L',
    ask: 'Six inches off moved the dip from 1818 to 1824 kHz: how much more for 1834?',
    source: 'a mailing list of tower people, 2006; 1 kHz an inch, 10 in more',
    check: 'antenna.trim_on',
    inputs: { taken_off_m: '6 in', before_mhz: '1818 kHz', after_mhz: '1824 kHz', wanted_mhz: '1834 kHz' },
    cases: [{ expect: { more_m: [10 * inch, 1 * inch] } }],
  },
  {
    id: 'a third resonance that is not three times',
    ask: 'A dipole resonant at 7.030 MHz is so again at 21.600, not at 21.09: is that normal?',
    source: 'a question board; end effect once a wire gives 3.05 to 3.11 times, here 3.073; 1.5 % of the frequency',
    check: 'antenna.higher_resonance',
    inputs: { first_mhz: '7.030', measured_mhz: '21.600 MHz' },
    cases: [{ expect: { expected_mhz: [21.6, 0.015 * 21.6], expected_ratio: [3.08, 0.03], measured_ratio: [3.073, 0.001] } }],
  },
  {
    id: 'radials, raised and on the ground',
    ask: 'Which length is right for quarter-wave radials on 7.1 MHz, raised and lying?',
    source: 'antenna mailing lists, 2008; 33 ft raised, about 21 ft lying, 5 %',
    check: 'antenna.radials',
    inputs: { frequency_mhz: '7.1', radials: '4' },
    added: '7.1 MHz, four radials',
    cases: [{ expect: { raised_m: [33 * ft, 0.05 * 33 * ft], on_ground_m: [21 * ft, 0.05 * 21 * ft] } }],
  },
  {
    id: 'a 20 m vertical with sloping radials',
    ask: 'What length had a 20 m quarter-wave vertical that worked without trimming?',
    source: 'a personal radio blog, a whisker under 5 m',
    check: 'antenna.cut_length',
    inputs: { kind: 'ground_plane', frequency_mhz: '14.2' },
    added: '14.2 MHz',
    cases: [{ expect: { length_m: [5.0, 0.1] } }],
  },
  {
    id: 'an end-fed half wave that is too long',
    ask: 'A 66 ft end-fed half wave is best at the low end of 40 m: how much off for the middle?',
    source: 'a personal radio page on a 49:1 transformer; 1.4 ft, one end only, 10 %',
    check: 'antenna.trim',
    inputs: { length_m: '66ft', resonant_mhz: '7.0', wanted_mhz: '7.15' },
    added: 'middle at 7.15 MHz',
    cases: [{ expect: { change_m: [-0.42, 0.042] } }],
  },
  {
    id: 'what that cut does on 28 MHz',
    ask: 'The same wire, moved from 7.0 to 7.15 MHz: what happens on its harmonics?',
    source: 'the same page: they move with it, 0.6 MHz at 28',
    check: 'antenna.end_fed_again',
    inputs: { first_mhz: '7.0', wanted_mhz: '7.15' },
    cases: [{ expect: { fourth_moves_mhz: [0.6, 0.05] } }],
  },
  {
    id: 'a steep V from a high support',
    ask: 'From 80 ft with 50 ft of run-out: how steep is an inverted V, how long each line?',
    source: 'an antenna news group, 2007; 32 degrees from the vertical, 64 between the legs, 94 ft, 1 %',
    check: 'antenna.stake_line',
    inputs: { height_m: '80 ft', out_m: '50 ft' },
    cases: [{ expect: { length_m: [94.3 * ft, 0.943 * ft], from_vertical_deg: [32, 0.32], between_deg: [64, 0.64] } }],
  },
  {
    id: 'a 40 m V on a 9 m pole',
    ask: 'Two 10 m legs from 7 m up, ends 1 m above ground: how far do they reach, at what angle?',
    source: 'a blog of summit outings; 8 m each side, 106 degrees, 2 %',
    check: 'antenna.v_reach',
    inputs: { leg_m: '10m', apex_m: '7', end_m: '1 m' },
    added: 'ends 1 m up',
    cases: [{ expect: { each_m: [8, 0.16], both_m: [16, 0.32], between_deg: [106, 2.12] } }],
  },
  {
    id: 'a cord over a branch',
    ask: 'A 50 ft cord over a branch has both ends 5 ft up: how high is the branch?',
    source: 'a personal radio blog, 2015 (its 25 ft forget the 5); 30 ft, 3 %',
    check: 'antenna.branch_height',
    inputs: { cord_m: '50 ft', ends_m: "5'" },
    cases: [{ expect: { branch_m: [30 * ft, 0.9 * ft] } }],
  },
  {
    id: 'arms of a V that hang',
    ask: 'Each arm leaves the top 30 degrees below level, catenary constant 109.25 ft: how much lower is its end, what is the pull?',
    source: 'a personal antenna page whose own figures clash; 16.9 ft and 1.155 times, 2 %; a 60 ft arm wants a constant of 103.9 ft',
    check: 'antenna.arm_sag',
    inputs: { angle_deg: '30' },
    cases: [
      { set: { constant_m: '109.25 ft' }, expect: { drop_m: [16.9 * ft, 0.338 * ft], pull_ratio: [1.155, 0.0231] } },
      { set: { arm_m: '60 ft' }, expect: { constant_out_m: [103.9 * ft, 2 * ft] } },
    ],
  },
  {
    id: 'a vertical that leans',
    ask: 'How far may a wire vertical lean before it matters?',
    source: 'a mailing list of tower people, 2003; 0.03, 0.3 and 3 dB at 5, 15 and 45 degrees, 5 % (to the digit given)',
    check: 'antenna.lean',
    inputs: {},
    cases: [
      { set: { lean_deg: '5' }, expect: { loss_db: [0.0331, 0.05 * 0.0331] } },
      { set: { lean_deg: '15' }, expect: { loss_db: [0.3, 0.015] } },
      { set: { lean_deg: '45' }, expect: { loss_db: [3, 0.15] } },
    ],
  },
  {
    id: 'two whips as a dipole, narrow',
    ask: 'SWR 1.5 at 7.145, 8.8 at 7.000, 10.5 at 7.300: how wide is the 2:1 band?',
    source: 'a preparedness forum, 2016; a series circuit gives 62 to 65 kHz, 10 %',
    check: 'antenna.swr_band',
    inputs: { first_mhz: '7.000', first_swr: '8.8', second_mhz: '7.145', second_swr: '1.5:1', third_mhz: '7300 kHz', third_swr: '10.5' },
    cases: [{ expect: { width_mhz: [0.0635, 0.00635] } }],
  },
  {
    id: 'a whip that shows seven ohms',
    ask: 'A roof whip resonates at 7.040, the SWR is very high and the bridge shows 7 ohm: why?',
    source: 'a low-power mailing list, 1995; 7.1:1, a 7:1 match is wanted, 3 %',
    check: 'antenna.swr_of_resistance',
    inputs: { resistance_ohm: '7 ohm' },
    cases: [{ expect: { swr: [7.14, 0.214], impedance_ratio: [7.14, 0.214] } }],
  },
  {
    id: 'a roof whip read on five frequencies',
    ask: 'SWR 1.5, 1.0, 1.2, 1.5, 1.8 from 14.000 to 14.350: where does it resonate, how wide is 2:1?',
    source: 'a personal radio blog; near 14.12, from about 13.9 to 14.39 MHz, within 0.1 MHz; a Q of about 20, a sign of loss',
    check: 'antenna.swr_band',
    inputs: {
      first_mhz: '14.000', first_swr: '1.5', second_mhz: '14.100', second_swr: '1.0', third_mhz: '14.200', third_swr: '1.2',
      fourth_mhz: '14.300', fourth_swr: '1.5', fifth_mhz: '14.350', fifth_swr: '1.8',
    },
    cases: [{ expect: { resonant_mhz: [14.12, 0.1], low_mhz: [13.9, 0.1], high_mhz: [14.39, 0.1], width_mhz: [0.5, 0.1], q: [20, 4] } }],
  },
  {
    id: 'twenty-two turns or forty-two',
    ask: 'A rod of 16.7 ft wants 8.3 µH on 7.1 MHz: which coil is right, 22 close-wound turns or 42 over 8 in?',
    source: 'a personal radio blog, 2024; 8.0 and 10.3 µH, 8 %',
    check: 'antenna.coil',
    inputs: { diameter_m: '1.42 in' },
    cases: [
      { set: { turns: '22', pitch_m: '0.11 in' }, expect: { coil_uh: [8.0, 0.64] } },
      { set: { turns: '42', length_m: '8 in' }, expect: { coil_uh: [10.3, 0.824] } },
    ],
  },
  {
    id: 'the coil of a 16.7 ft rod',
    ask: 'What coil does a 16.7 ft rod want on 7.1 MHz?',
    source: 'the same blog: 8.3 µH were foretold, 8.0 did it; the method claims 10 %',
    check: 'antenna.loading_coil',
    inputs: { height_m: '16.7 ft', frequency_mhz: '7.1', diameter_m: '10 mm' },
    added: 'a tapered rod of 16 to 6 mm taken as 10 mm',
    cases: [{ expect: { coil_uh: [8.15, 0.815] } }],
  },
  {
    id: 'four feet on the car roof',
    ask: 'How well does a 4 ft whip radiate on 40 and on 80 m?',
    source: 'a mailing list on old radios, 2008; about 2 % and 0.35 %, within a factor of two',
    check: 'antenna.whip',
    inputs: { height_m: '4 ft', coil_q: '200', ground_ohm: '10' },
    added: 'coil of Q 200, 10 ohm of ground',
    cases: [
      { set: { frequency_mhz: '7.2' }, expect: { efficiency_pct: [2, 1], loss_db: [17, 3] } },
      { set: { frequency_mhz: '3.8' }, expect: { efficiency_pct: [0.35, 0.175], loss_db: [25, 3] } },
    ],
  },
  {
    id: 'another reading at the other end of the coax',
    ask: '49 ohm at the antenna, 58 ohm through 100 ft of coax: is something broken?',
    source: 'radio makers’ mailing list, 2002; no: a line of 53.3 ohm does it at an odd quarter wave, 3 %',
    check: 'antenna.turning_line',
    inputs: { antenna_ohm: '49', radio_ohm: '58 ohm' },
    cases: [{ expect: { line_ohm: [53.3, 1.6], from_50_pct: [6.6, 3.2] } }],
  },
  {
    id: 'half a wave of coax for 30 m',
    ask: 'Is 468/f times the velocity factor right for half a wave of coax at 10.1 MHz, factor 0.82?',
    source: 'a ham forum; no: 39.9 ft (492/f), 1 %; two are 79.9 ft',
    check: 'antenna.line_lengths',
    inputs: { frequency_mhz: '10.1', velocity_factor: '0,82' },
    cases: [{ expect: { half_m: [39.9 * ft, 0.399 * ft] } }],
  },
  {
    id: 'what comes back',
    ask: 'How much of 100 W comes back at SWR 1.5, 2 and 3, and what is left of 35 W at 1.3?',
    source: 'radio makers’ mailing list, 2003, and a club’s chart; 4, 11, 25 W and 34.4 W, 1 % (to the digits given)',
    check: 'antenna.comes_back',
    inputs: { power_w: '100 W' },
    cases: [
      { set: { swr: '1.5' }, expect: { back_w: [4, 0.04] } },
      { set: { swr: '2' }, expect: { back_w: [11.11, 0.111] } },
      { set: { swr: '3:1' }, expect: { back_w: [25, 0.25] } },
      { set: { power_w: '35', swr: '1.3' }, expect: { forward_less_back_w: [34.4, 0.344] } },
    ],
  },
  {
    id: 'volts behind a 49:1',
    ask: 'A 49:1 and a half-wave wire take 100 W: what voltage stands at the wire’s end of the transformer?',
    source: 'an engineering blog, 2021; 495 V rms, 700 V peak, 1400 V peak to peak, 2 %',
    check: 'antenna.wire_voltage',
    inputs: { power_w: '100', resistance_ohm: '2450 ohm' },
    cases: [{ expect: { rms_v: [495, 9.9], peak_v: [700, 14], peak_to_peak_v: [1400, 28] } }],
  },
  {
    id: 'a small core that gets hot',
    ask: '0.00596 S across the primary without load: what share heats it, how much may it take at 0.8 W of heat?',
    source: 'an engineering blog, 2015; 30 % and 2.7 W, 3 %',
    check: 'antenna.transformer_heat',
    inputs: { core_siemens: '0.00596', heat_w: '0.8' },
    cases: [{ expect: { core_pct: [29.8, 0.9], bears_w: [2.7, 0.081] } }],
  },
];

/** One question for each check, for the test that asks them all: inputs, and results with how near they must come. */
const first_of = (key) => {
  const { inputs, cases } = questions.find((row) => row.check === key);
  return [{ ...inputs, ...cases[0].set }, cases[0].expect];
};
export const asked = {
  ...Object.fromEntries([...new Set(questions.map((row) => row.check))].map((key) => [key, first_of(key)])),
  // 468/7.1 feet, worked out apart; half of it, and 3 % more
  'antenna.cut_length': [{ kind: 'dipole', frequency_mhz: '7100 kHz' }, { length_m: [20.091, 0.0006], half_m: [10.046, 0.0006], start_m: [20.694, 0.0006] }],
  // 468/f feet for 40, 20, 15 and 10 m, worked out apart; a loop has other figures
  'antenna.bands': [{ kind: 'dipole', first_mhz: '7.1', second_mhz: '14.15', third_mhz: '21.2', fourth_mhz: '28.4' }, { first_m: [20.091, 0.0006], second_m: [10.081, 0.0006], third_m: [6.729, 0.0006], fourth_m: [5.023, 0.0006], all_m: [43.18, 0.01] }],
  // a list writer's model (second hand), 80 m, 120 degrees: 60.4 ohm; a wire model of our own: 0.9 % more wire than straight
  'antenna.v_angle': [{ frequency_mhz: '3.65', between_deg: '120', diameter_m: '2 mm' }, { r_ohm: [60.4, 3], longer_pct: [0.85, 0.1] }],
  // 1005/14.15 feet of loop, turned round
  'antenna.resonates_at': [{ kind: 'loop', length_m: '21.648 m' }, { frequency_mhz: [14.15, 0.0005] }],
  // legs of 10.046 m from 6 m down to 2.5: 9.417 m out and half a metre of tie to each side of 22 m
  'antenna.fits': [{ kind: 'inverted_v', frequency_mhz: '7.1', apex_m: '6', span_m: '22' }, { span_room_m: [2.167, 0.002] }],
  'antenna.rope_over_branch': [{ branch_m: '30 ft' }, { rope_m: [22.288, 0.0005] }],
  // QST, March 2014, p. 50: 420 ft, 50 lbf, 0.011 lb/ft (16.370 g/m) sag 4.852 ft
  'antenna.sag': [{ span_m: '420 ft', pull_kg: '50 lb', wire_g: '16.370' }, { sag_m: [4.852 * ft, 0.0006 * ft] }],
  // 20.88 m read at 6.892 MHz and wanted on 7.1: 20.27 m, worked out apart (upside down it would be 21.51)
  'antenna.trim_many': [{ wanted_mhz: '7.1', first_m: '20.88', first_mhz: '6.892' }, { new_length_m: [20.27, 0.01], doubt_reading: [0, 0] }],
  // a wire model of our own, not this code: 25 kHz a centimetre, 54 kHz wide
  'antenna.whip_sharpness': [{ height_m: '2.4', frequency_mhz: '7.1' }, { khz_per_cm: [-25, 5], width_mhz: [0.054, 0.011] }],
  // 14.3 ohm and 8.4 %; with 36 ohm more 50.3 ohm and 2.4 %: worked out apart
  'antenna.better_match': [{ radiation_ohm: '4.3', radiation_share_pct: '28', one_ohm: '46', other_ohm: '10' }, { one_swr: [1.0, 0.01], one_pct: [2.4, 0.05], other_pct: [8.4, 0.1] }],
  // 468/7.1 feet; 20.57 m by a wire model of our own, theories agree within 0.6 %
  // and King's three terms between 0.4885 and 0.4850 waves for radii of 1e-5 and 1e-4 (worked out apart)
  'antenna.rule_or_theory': [{ frequency_mhz: '7.1', diameter_m: '1.6 mm' }, { rule_m: [20.09, 0.006], theory_m: [20.57, 0.12], three_term_m: [20.55, 0.074], apart_pct: [0, 0.6], three_term_ohm: [68.5, 5.5] }],
  // IEEE Trans. VT-19 (1970) 230-236, abstract: about -37.5 dBi on 4 MHz, within 6 dB
  'antenna.whip_up': [{ zenith_mhz: '4' }, { zenith_dbi: [-37.5, 6] }],
  // a maker's page (second hand): 17.0 dB through a 49:1 into a resistive load, where the ratio is 16.9
  'antenna.transformer_loss': [{ through_db: '17.0' }, { loss_db: [0.1, 0.1], resistor_ohm: [2400, 0] }],
  // 0.95 half waves in space resonate as one
  'antenna.any_length': [{ length_m: '20.056', first_mhz: '7.1' }, { away_quarters: [0, 0.002], worst_mhz: [7.1, 0] }],
  // a quarter wave over average ground: 72.2 + 10.3 ohm, worked out apart
  'antenna.height': [{ frequency_mhz: '7.1', apex_m: '10.556' }, { r_ohm: [82.5, 1], height_waves: [0.25, 0.0001] }],
  // 50 N on 29.4 g/m: 0.297 m by the catenary, worked out apart; maker's 29.8 g/m; 50 of 1499 N
  'antenna.pull': [{ wire: 'cu12_hard', span_m: '20.3', pull_kg: '5.0986' }, { sag_m: [0.297, 0.005], share_pct: [3.34, 0.01] }],
  // from 9 m to 1.5 m over 17 m: 18.581 m (Pythagoras), 5.25 m high half way
  'antenna.clears': [{ top_m: '9', low_m: '1.5', out_m: '17', at_m: '8.5', obstacle_m: '3' }, { length_m: [18.581, 0.0006], clear_m: [2.25, 1e-9] }],
  // a level dipole of 468/14.25 feet and its ties want 11.01 m
  'antenna.which_fits': [{ frequency_mhz: '14.25', apex_m: '7', span_m: '10' }, { dipole_m: [-1.01, 0.01] }],
  // 9 of 100 W, an independent bench (second hand); a twentieth of 83.3 m
  'antenna.transformer_cost': [{ transformer: 'un64_43_3600', power_w: '100', frequency_mhz: '3.6' }, { heat_w: [9, 0.1], counterpoise_m: [4.164, 0.001] }],
};
