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
    cases: [{ expect: { 'feedline.total_loss_db': [16, 1], 'feedline.swr_at_radio': [35.5, 3.55], 'feedline.arrives_pct': [2.5, 0.6], 'antenna.swr': [1475, 15] } }],
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
    levers: {
      'radio.full_power_w': '100', 'antenna.frequency_mhz': '28.4', 'feedline.cable': 'rg58c', 'feedline.measured_swr': '1.5',
      'feedline.measured_at': 'radio',
    },
    added: 'a line drawn out until its matched loss reads 1.15 dB',
    seek: { lever: 'feedline.length_m', from: 0, to: 50, step: 0.05, result: 'feedline.matched_loss_db', target: 1.15, within: 0.004 },
    cases: [{ expect: { 'antenna.swr': [1.7, 0.034] } }],
  },
  {
    id: 'five watts against a hundred',
    ask: 'How many S-units are 5 W below 100 W?',
    source: 'a low-power blog; 10 log of the ratio, 6 dB a unit (IARU Region 1 R.1): 2.2 to the digits given',
    check: 'feedline.decibels',
    inputs: { power_w: '100 W' },
    seek: { lever: 'loss_db', from: 0, to: 40, step: 0.01, result: 'arrives_w', target: 5, within: 0.01 },
    cases: [{ expect: { s_units: [2.168, 0.022], loss_db: [13.0, 0.13] } }],
  },
  {
    id: 'a hundred watts against fifteen hundred',
    ask: 'How many S-units are 100 W below 1500 W?',
    source: 'a radio forum; 10 log of the ratio, 6 dB a unit: 2.0 to the digits given',
    check: 'feedline.decibels',
    inputs: { power_w: '1.5 kW' },
    seek: { lever: 'loss_db', from: 0, to: 40, step: 0.01, result: 'arrives_w', target: 100, within: 0.2 },
    cases: [{ expect: { s_units: [1.96, 0.02], loss_db: [11.8, 0.12] } }],
  },
  {
    id: 'ninety watts against a hundred',
    ask: 'Does it matter whether 90 or 100 W go out?',
    source: 'a mailing list of 1998; 0.46 dB',
    check: 'feedline.decibels',
    inputs: { power_w: '100' },
    seek: { lever: 'loss_db', from: 0, to: 10, step: 0.01, result: 'arrives_w', target: 90, within: 0.15 },
    cases: [{ expect: { loss_db: [0.46, 0.0051] } }],
  },
  {
    id: 'one S-unit over the noise',
    ask: 'S9 over a noise of S8: how many decibels are that?',
    source: 'a personal blog; 6 dB a unit below S9',
    check: 'feedline.decibels',
    inputs: {},
    seek: { lever: 'loss_db', from: 0, to: 60, step: 0.5, result: 's_units', target: 1, within: 1e-9 },
    cases: [{ expect: { loss_db: [6, 0] } }],
  },
  {
    id: 'six S-units over the noise',
    ask: 'S9 over a noise of S3: how many decibels are that?',
    source: 'a personal blog; 6 dB a unit below S9',
    check: 'feedline.decibels',
    inputs: {},
    seek: { lever: 'loss_db', from: 0, to: 60, step: 0.5, result: 's_units', target: 6, within: 1e-9 },
    cases: [{ expect: { loss_db: [36, 0] } }],
  },
];
