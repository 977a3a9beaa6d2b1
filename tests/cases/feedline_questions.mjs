// What people asked about feed lines, SWR and decibels, in our words, with the figures and units they had. Each row goes through
// the program as a person would take it: `levers` into an outing, or `inputs` into a check; `seek` moves one of them in steps until a
// result shows what the asker already knew. `expect` names a result, its figure and how near it must come. Where the asker left
// something out, `added` says what was taken.
export const questions = [
  {
    id: 'two short jumpers of thin line',
    ask: 'What do 25 ft of RG-58 and of RG-316 take from 5.5 W on 10 m?',
    source: 'a field-craft blog, measured jumpers; figures from makers’ tables (recalled), makes differ by a third',
    levers: { 'radio.full_power_w': '5.5', 'antenna.frequency_mhz': '28', 'feedline.length_m': '25ft', 'feedline.measured_swr': '1' },
    added: 'matched load; stranded RG-58',
    cases: [
      { set: { 'feedline.cable': 'rg58c' }, expect: { 'feedline.total_loss_db': [0.6, 0.15], 'feedline.power_to_antenna_w': [4.8, 0.16] } },
      { set: { 'feedline.cable': 'rg316' }, expect: { 'feedline.total_loss_db': [1.1, 0.15], 'feedline.power_to_antenna_w': [4.3, 0.16] } },
      { set: { 'feedline.cable': 'rg58c', 'antenna.frequency_mhz': '7000 kHz' }, expect: { 'feedline.total_loss_db': [0.3, 0.15] } },
      { set: { 'feedline.cable': 'rg316', 'antenna.frequency_mhz': '7000 kHz' }, expect: { 'feedline.total_loss_db': [0.6, 0.15] } },
    ],
  },
  {
    id: 'ten watts and thirty metres',
    ask: 'Of 10 W, what reaches the antenna through 30 m of coax on 20 m?',
    source: 'a blog for new licensees; figures from 5.4 and 2.4 dB/100 m',
    levers: { 'radio.full_power_w': '10W', 'antenna.frequency_mhz': '14,2', 'feedline.length_m': '30m', 'feedline.measured_swr': '1' },
    added: '14.2 MHz; matched load',
    cases: [
      { set: { 'feedline.cable': 'rg58c' }, expect: { 'feedline.total_loss_db': [1.6, 0.2], 'feedline.power_to_antenna_w': [6.9, 0.32] } },
      { set: { 'feedline.cable': 'rg213' }, expect: { 'feedline.total_loss_db': [0.7, 0.2], 'feedline.power_to_antenna_w': [8.5, 0.4] } },
      { set: { 'feedline.cable': 'rg174' }, expect: { 'feedline.total_loss_db': [3.6, 0.2], 'feedline.power_to_antenna_w': [4.35, 0.2] } },
    ],
  },
  {
    id: 'a 20 m dipole used on 40 m',
    ask: 'A feed point of 13.6-j1000 ohm behind 45 ft of RG-213 on 7 MHz: how much is lost, and what does the radio see?',
    source: 'a question column of a society’s magazine; its own figures 16 dB and 35:1, exact line theory 16.1 dB and 36:1',
    levers: {
      'radio.full_power_w': '100', 'antenna.frequency_mhz': '7 MHz', 'feedline.cable': 'rg213', 'feedline.length_m': '45 ft',
      'antenna.feed_r_ohm': '13.6', 'antenna.feed_x_ohm': '-1000 ohm',
    },
    cases: [{ expect: { 'feedline.total_loss_db': [16, 1], 'feedline.swr_at_radio': [35.5, 3.55], 'feedline.arrives_pct': [2.5, 0.6], 'antenna.swr': [1475, 15], 'feedline.radio_r_ohm': [540, 54], 'feedline.radio_x_ohm': [820, 82] } }],
  },
  {
    id: 'a hundred metres with a low load',
    ask: 'A hundred metres of RG-213 at 3.8 MHz end in 14-j1 ohm: what is lost altogether?',
    source: 'a mailing list of 2009; exact theory 1.91 dB from 1.18 dB/100 m',
    levers: {
      'radio.full_power_w': '100', 'antenna.frequency_mhz': '3.8', 'feedline.cable': 'rg213', 'feedline.length_m': '100m',
      'antenna.feed_r_ohm': '14', 'antenna.feed_x_ohm': '-1',
    },
    cases: [{ expect: { 'feedline.total_loss_db': [1.9, 0.15], 'antenna.swr': [3.6, 0.05] } }],
  },
  {
    id: 'half a decibel',
    ask: 'Is 0.5 dB right for 10 m of RG-58 on 14 MHz with a matched load?',
    source: 'a group of kit builders; 5.3 dB/100 m (recalled)',
    levers: {
      'radio.full_power_w': '100', 'antenna.frequency_mhz': '14000kHz', 'feedline.cable': 'rg58c', 'feedline.length_m': '10 m',
      'feedline.measured_swr': '1.0',
    },
    cases: [{ expect: { 'feedline.total_loss_db': [0.53, 0.1], 'feedline.arrives_pct': [88.4, 2] } }],
  },
  {
    id: 'a meter at the radio flatters',
    ask: 'Behind 1.15 dB of line a meter at the radio reads 1.5: what stands at the antenna?',
    source: 'the manual of an SWR instrument, worked example; rho grows by the line’s loss both ways',
    check: 'feedline.swr_at_antenna',
    inputs: { swr: '1.5', matched_db: '1.15 dB' },
    cases: [{ expect: { swr_at_antenna: [1.7, 0.034] } }],
  },
  {
    id: 'nothing on the end and still a fair meter',
    ask: 'Thirty metres of stranded RG-58 on 28.4 MHz take 2.35 dB: what would the radio read with 4, with 10 and with no antenna?',
    source: 'worked out apart from the reflection’s definition: 2.07, 2.82, 3.79; 6.03 dB at SWR 10',
    check: 'feedline.swr_cost',
    inputs: { matched_db: '2.346' },
    cases: [
      { set: { swr: '4' }, expect: { swr_at_radio: [2.07, 0.005] } },
      { set: { swr: '10' }, expect: { swr_at_radio: [2.82, 0.005], total_db: [6.03, 0.005] } },
    ],
  },
  {
    id: 'a hundred feet are not a hundred metres',
    ask: 'A table has 4.9 dB per 100 ft for RG-58C at 100 MHz: what do 15 m lose?',
    source: 'a maker’s table (recalled); 16.08 dB/100 m and 2.41 dB, not 0.735 dB',
    check: 'feedline.per_length',
    inputs: { table_db: '4.9', per: 'ft', length_m: '15 m' },
    cases: [{ expect: { loss_db: [2.41, 0.005], per_100m_db: [16.08, 0.005], per_100ft_db: [4.9, 1e-9] } }],
  },
  {
    id: 'the handbook’s line with SWR 4',
    ask: '150 ft of RG-213 on 14.2 MHz take 1.193 dB matched. What do they take with SWR 4 at the antenna?',
    source: 'a society’s antenna handbook, worked example (from memory): 2.12 dB, 0.93 dB of it because of SWR',
    check: 'feedline.swr_cost',
    inputs: { swr: '4', matched_db: '1.193' },
    cases: [{ expect: { total_db: [2.12, 0.005], extra_db: [0.93, 0.005], mismatch_db: [1.938, 0.001] } }],
  },
  {
    id: 'nine decibels that read 1.29',
    ask: '200 ft of RG-213 measured 4.5 dB/100 ft at 432 MHz. The open end read 18 dB of return loss: what is the roll worth?',
    source: 'a mailing list of 2010; SWR 1.288 from 18 dB, worked out apart; typed at 50 MHz, where the program’s range ends',
    check: 'feedline.my_cable',
    inputs: { length_m: '200ft', first_swr: '1.2880', first_mhz: '50', frequency_mhz: '50', cable: 'rg213' },
    cases: [{ expect: { first_db: [14.76, 0.015], first_at_mhz: [50, 1e-9] } }],
  },
  {
    id: 'a quarter wave of cable',
    ask: 'The lowest dip of an open roll of solid-dielectric cable is at 7.1 MHz: how long is it?',
    source: 'worked out from c and a velocity factor of 0.66: 6.967 m, not 10.556 m',
    check: 'feedline.length_by_dip',
    inputs: { frequency_mhz: '7.1', cable: 'rg58c' },
    cases: [
      { expect: { roll_m: [6.967, 0.0005] } },
      { set: { length_m: '6.967' }, expect: { velocity_factor: [0.66, 1e-4] } },
    ],
  },
  {
    id: 'a hundred watts on a bad match',
    ask: 'How much voltage stands on a 50 ohm line with 100 W and SWR 10?',
    source: 'definition of SWR, worked out apart: 223.6 V rms, 316.2 V peak',
    check: 'feedline.power_handling',
    inputs: { power_w: '100', cable: 'rg58c', frequency_mhz: '14.2', swr: '10' },
    cases: [{ expect: { highest_v: [223.6, 0.05], peak_v: [316.2, 0.05] } }],
  },
  {
    id: 'what thick foam cable takes',
    ask: 'How many watts may go through 400 size foam cable at 30 MHz, matched and at SWR 3?',
    source: 'a maker’s table (recalled): 3330 W at 30 MHz, 40 °C around it',
    check: 'feedline.power_handling',
    inputs: { power_w: '100', cable: 'foam_400', frequency_mhz: '30' },
    cases: [
      { set: { swr: '1' }, expect: { rated_w: [3330, 43] } },
      { set: { swr: '3' }, expect: { rated_w: [1110, 14] } },
    ],
  },
  {
    id: 'window line in the place of coax',
    ask: 'The same 20 m dipole on 40 m, 13.6-j1000 ohm behind 45 ft: what would 400 ohm window line lose?',
    source: 'a question column of a society’s magazine: 2.7 to 3 dB; exact line theory 2.8 dB with 0.2 dB/100 m',
    levers: {
      'radio.full_power_w': '100', 'antenna.frequency_mhz': '7 MHz', 'feedline.cable': 'window_solid', 'feedline.length_m': '45 ft',
      'antenna.feed_r_ohm': '13.6', 'antenna.feed_x_ohm': '-1000 ohm', 'feedline.own_loss_db': '0.2', 'feedline.own_at_mhz': '7',
    },
    cases: [{ expect: { 'feedline.total_loss_db': [2.8, 0.2] } }],
  },
  {
    id: 'two lengths that each lose a fifth',
    ask: 'Two lengths in a row lose a fifth of the power each: what is lost altogether?',
    source: 'decibels add, shares multiply: 36 %, not 40 %',
    levers: {
      'radio.full_power_w': '100', 'antenna.frequency_mhz': '14.2', 'feedline.cable': 'rg213', 'feedline.length_m': '50m',
      'feedline.own_loss_db': '1.9382', 'feedline.own_at_mhz': '14.2', 'feedline.measured_swr': '1',
    },
    cases: [
      { expect: { 'feedline.arrives_pct': [80, 0.1] } },
      { set: { 'feedline.length_m': '100m' }, expect: { 'feedline.arrives_pct': [64, 0.1] } },
    ],
  },
  {
    id: 'how long for half',
    ask: 'How long may RG-174 be on 28.4 MHz before half of the power warms it?',
    source: 'log-log between a maker’s points (recalled): 15.61 dB/100 m, so 3.01 dB are 19.3 m',
    check: 'feedline.longest',
    inputs: { arrives_pct: '50', cable: 'rg174', frequency_mhz: '28.4', swr: '1' },
    cases: [{ expect: { length_m: [19.3, 0.6], matched_m: [19.3, 0.6] } }],
  },
  {
    id: 'the lightest for a decibel',
    ask: 'Fifteen metres on 14.2 MHz may lose 1 dB, matched: what is the lightest roll?',
    source: 'catalogue by hand: RG-174 loses 1.8 dB, RG-58 with a solid core 0.64 dB (1.072 sqrt f + 0.016 f) with 570 g',
    check: 'feedline.lightest',
    inputs: { loss_db: '1', length_m: '15', frequency_mhz: '14.2', swr: '1' },
    cases: [{ expect: { weight_g: [570, 1e-6], roll_db: [0.641, 0.001] } }],
  },
];
