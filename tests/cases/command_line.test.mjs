// The command line: shapes, tables, units, errors, and what people asked, answered in their own units.
import assert from 'node:assert/strict';
import { join } from 'node:path';
import test from 'node:test';
import { fileURLToPath } from 'node:url';
import { asked as asked_antenna } from './antenna_questions.mjs';
import { questions as feedline } from './feedline_questions.mjs';
import { questions as power } from './power_questions.mjs';
import { ask, check_shape, folder, refused, run, sets } from './program.mjs';
import { asked as asked_safety } from './safety_questions.mjs';
import { questions as sky } from './sky_questions.mjs';

const demo = fileURLToPath(new URL('../../assets/outings/a-first-demo.json', import.meta.url));
const keys_of = (rows) => rows.map((row) => row.key);

test('a measured SWR that cannot be true is named', () => {
  const answer = ask(['--evaluate', demo, '--set', 'feedline.measured_swr=90']);
  assert.equal(answer.clashes.length, 1);
  assert.match(answer.clashes[0], /SWR 90.* cannot show at the radio/);
  assert.equal(answer.readings['feedline.arrives_pct'].value, null);
});

test('the demo outing is known all through', () => {
  const answer = ask(['--evaluate', demo]);
  check_shape(answer, 'outlook');
  assert.deepEqual(Object.keys(answer).sort(), ['clashes', 'groundsheet', 'kind', 'levers', 'readings']);
  assert.deepEqual(answer.clashes, []);
  assert.deepEqual(Object.keys(answer.readings), keys_of(ask(['--readings'])));
  // all but what only a person at the place can say
  assert.match(answer.readings['safety.left_to_look_at'].reason, /not looked at yet/);
  assert.match(answer.readings['safety.line_room_m'].reason, /not looked at yet/);
  assert.match(answer.readings['antenna.clears_m'].reason, /needs obstacle/); // nothing stands under the demo's wire
  const of_the_place = ['safety.left_to_look_at', 'safety.line_room_m', 'antenna.clears_m'];
  for (const [key, reading] of Object.entries(answer.readings)) {
    if (!of_the_place.includes(key)) assert.notEqual(reading.value, null, `${key}: ${reading.reason}`);
  }
  assert.equal(answer.levers['radio.transmit_power_w'].value, 40);
  assert.equal(answer.levers['radio.transmit_power_w'].from, 'yours');
  assert.equal(answer.levers['feedline.roll_loss_pct'].from, 'usual');
  assert.equal(answer.levers['feedline.cable'].value, 'rg58c');
  assert.equal(answer.readings['feedline.arrives_pct'].state, 'holds');
});

/** An outing of 13 June 2026 in a zone four hours behind UTC: on the air from 17:00, contacts every ten minutes. */
const counted_outing = (count) => JSON.stringify({
  groundsheet: 1, kind: 'outing', name: 'Counted', date: '2026-06-13',
  levers: { 'clock.utc_offset_min': -240, 'clock.arrive_min': 990, 'clock.leave_by_min': 1200, 'clock.set_up_min': 30, 'clock.pack_down_min': 15 },
  on_air: [{ from: '2026-06-13T21:00:00Z' }],
  tally: Array.from({ length: count }, (_, i) => ({ at: `2026-06-13T21:${String(10 * (i + 1)).padStart(2, '0')}:00Z` })),
});

test('--now prints what stands on the sheet for being on the air at that time', (t) => {
  const files = folder(t), file = files.file(counted_outing(5));
  const at = (time) => ask(['--evaluate', file, '--now', time]);
  const then = at('18:00');
  assert.equal(then.now.phase, 'on_air');
  assert.equal(then.now.utc, '2026-06-13T22:00:00Z');
  assert.equal(then.now.local_min, 1080);
  assert.equal(then.now.on_air_min, 60);
  assert.equal(then.now.pack_in_min, 105);
  assert.equal(then.now.counted, 5);
  assert.equal(then.readings['pace.so_far'].value, 5);
  // gamma(4, 1/3 h), 12 an hour within half, and 5 in an hour: 9 in 4/3 h
  assert.ok(Math.abs(then.readings['pace.now_per_hour'].value - 6.75) < 1e-9, then.readings['pace.now_per_hour'].value);
  assert.deepEqual(at('2026-06-13T22:00:00Z'), then);
  assert.ok(at('19:00').readings['pace.chance_of_target_pct'].value < then.readings['pace.chance_of_target_pct'].value);
  assert.match(at('19:40').now.says.join(' '), /drying up/);
  assert.equal(at('2026-06-15T22:00:00Z').now.phase, 'after');
  assert.equal(at('2026-06-15T22:00:00Z').now.local_min, null);
  refused(['--evaluate', file, '--now', 'soon'], '--now');
  refused(['--evaluate', file, '--now'], '--now');
  refused(['--check', 'pace.chance', '--now', '18:00'], '--now');
  refused(['--evaluate', files.file('{"groundsheet": 1, "kind": "outing"}'), '--now', '18:00'], 'UTC offset');
});

test('--history takes the usual pace from earlier outings, and only from earlier ones', (t) => {
  const files = folder(t), file = files.file(counted_outing(0));
  const row = (date, contacts, minutes) => ({ name: 'Pond', date, contacts, on_air_min: minutes, started: `${date}T20:00:00Z` });
  const rows = [row('2026-05-01', 12, 60), row('2026-05-08', 25, 75), row('2026-05-15', 8, 40), row('2026-07-01', 99, 60)];
  const history = files.file(JSON.stringify({ groundsheet: 1, kind: 'history', outings: rows }));
  const pace = (...more) => ask(['--evaluate', file, ...more]).levers['pace.per_hour'];
  assert.equal(pace().value, 12);
  // gamma(4, 1/3 h) and 45 contacts in 175 min: 49 in 3.25 h
  assert.equal(pace('--history', history).value, 15.1);
  assert.equal(pace('--history', history).from, 'usual');
  assert.equal(pace('--history', history, '--set', 'pace.per_hour=5').value, 5);
  refused(['--evaluate', file, '--history', join(files.path, 'none.json')], 'none.json');
  refused(['--evaluate', file, '--history', file], 'kind');
});

test('moving one lever of the demo moves what follows, the way physics and the clock have it', (t) => {
  const read = (...pairs) => ask(['--evaluate', demo, ...pairs.flatMap((pair) => ['--set', pair])]).readings;
  const plan = read();
  const moved = (key, direction, ...pairs) => {
    const then = read(...pairs)[key].value, now = plan[key].value;
    t.diagnostic(`${pairs}: ${key} ${now} -> ${then}`);
    assert.ok(direction * (then - now) > 0, `${pairs}: ${key} ${now} -> ${then}`);
  };
  moved('power.runtime_h', 1, 'radio.transmit_power_w=20');
  moved('safety.public_m', -1, 'radio.transmit_power_w=20');
  moved('safety.public_m', 1, 'radio.transmit_power_w=100');
  moved('feedline.arrives_pct', -1, 'feedline.length_m=30');
  moved('feedline.arrives_pct', -1, 'feedline.cable=rg174');
  moved('pace.chance_of_target_pct', -1, 'clock.leave_by_min=18:00');
  moved('pace.chance_of_target_pct', -1, 'pace.per_hour=4');
  // a battery that ends before the stay does: contacts count until then
  moved('pace.expected_contacts', -1, 'battery.capacity_ah=8');
  assert.ok(read('battery.capacity_ah=8')['power.lasts_until_min'].value < plan['clock.pack_by_min'].value);
});

test('an empty outing has a reason for everything, and names the levers', (t) => {
  const answer = ask(['--evaluate', folder(t).outing({})]);
  check_shape(answer, 'outlook');
  for (const [key, reading] of Object.entries(answer.readings)) assert.match(reading.reason, /^needs |not looked at yet/, key);
  assert.equal(answer.readings['feedline.arrives_pct'].reason, 'needs cable');
});

test('the same question has the same answer, in every locale', () => {
  const once = run(['--evaluate', demo]).out;
  assert.equal(run(['--evaluate', demo]).out, once);
  for (const LC_ALL of ['C', 'de_DE.UTF-8', 'C.UTF-8']) assert.equal(run(['--evaluate', demo], { LC_ALL }).out, once);
});

test('values are set in the units that people write', () => {
  const value = (pair) => {
    const [key] = pair.split('=');
    const answer = ask(['--evaluate', demo, '--set', pair]);
    assert.equal(answer.levers[key].from, 'yours');
    return answer.levers[key].value;
  };
  const rows = [
    ['feedline.length_m=50ft', 15.24], ['feedline.length_m=7,5', 7.5], ['feedline.length_m=7.5 m', 7.5], ['feedline.length_m=24\' 6"', 7.4676],
    ['antenna.frequency_mhz=14060kHz', 14.06], ['antenna.frequency_mhz=14.06 MHz', 14.06], ['radio.transmit_power_w=5000 mW', 5],
    ['radio.transmit_power_w=40dBm', 10], ['feedline.measured_swr=3:1', 3], ['feedline.roll_loss_pct=140 %', 140],
  ];
  let worst = 0;
  for (const [pair, wanted] of rows) worst = Math.max(worst, Math.abs(value(pair) / wanted - 1));
  console.log(`  units: ${rows.length} values, worst ${worst.toExponential(1)} relative, allowed 1e-12`);
  assert.ok(worst < 1e-12);
  assert.equal(ask(['--evaluate', demo, '--set', 'feedline.cable=rg213']).levers['feedline.cable'].value, 'rg213');
});

test('the last of several settings counts, limits are levers too', () => {
  const answer = ask(['--evaluate', demo, ...['10', '20'].flatMap((m) => ['--set', `feedline.length_m=${m}`]), '--set', 'feedline.arrives_pct.limit=95', '--set', 'feedline.arrives_pct.ease=97']);
  assert.equal(answer.levers['feedline.length_m'].value, 20);
  assert.equal(answer.readings['feedline.arrives_pct'].state, 'fails');
});

test('longer or thinner line: less arrives', () => {
  const arrives = (values) => ask(['--evaluate', demo, ...sets(values)]).readings['feedline.power_to_antenna_w'].value;
  const at_antenna = { 'feedline.measured_at': 'antenna' };
  const lengths = ['10ft', '30ft', '60ft', '120ft'].map((length) => arrives({ ...at_antenna, 'feedline.length_m': length }));
  // thick to thin, as the cables are built: 10.3, 4.95 and 2.6 mm
  const cables = ['rg213', 'rg58c', 'rg174'].map((cable) => arrives({ ...at_antenna, 'feedline.cable': cable }));
  const bands = ['3600 kHz', '14200 kHz', '50.1 MHz'].map((frequency) => arrives({ ...at_antenna, 'antenna.frequency_mhz': frequency }));
  for (const row of [lengths, cables, bands]) for (let i = 1; i < row.length; ++i) assert.ok(row[i] < row[i - 1], row.join(' '));
  console.log(`  of 40 W: ${lengths.map((w) => w.toFixed(1)).join(', ')} W by length; ${cables.map((w) => w.toFixed(1)).join(', ')} W by cable`);
});

test('two levers that cannot both be true are answered with a reason', () => {
  const answer = ask(['--evaluate', demo, '--set', 'radio.transmit_power_w=150']);
  check_shape(answer, 'outlook');
  assert.equal(answer.readings['feedline.power_to_antenna_w'].reason, "Transmit power 150 W is more than the radio's full power 100 W.");
});

test('the tables are JSON arrays with their keys', () => {
  const levers = ask(['--levers']), readings = ask(['--readings']), checks = ask(['--checks']);
  for (const rows of [levers, readings, checks]) {
    assert.ok(Array.isArray(rows) && rows.length > 0);
    assert.equal(new Set(keys_of(rows)).size, rows.length);
    for (const row of rows) for (const member of ['key', 'link', 'source']) assert.ok(row[member].length > 0, `${row.key}: ${member}`);
  }
  const lever_members = (row) => {
    for (const member of ['name', 'evidence', 'source']) assert.ok(row[member].length > 0, `${row.key}: ${member}`);
    for (const member of ['usual', 'optional']) assert.equal(typeof row[member], 'boolean', row.key);
    if (row.options) {
      assert.ok(row.options.length > 0, row.key);
      for (const option of row.options) assert.deepEqual(Object.keys(option), ['key', 'name', 'retired'], row.key);
    } else if (row.kind !== 'text') {
      for (const member of ['least', 'most', 'step']) assert.equal(typeof row[member], 'number', `${row.key}: ${member}`);
      assert.ok(row.least < row.most, row.key);
    }
  };
  const reading_members = (row) => {
    assert.ok(row.name.length > 0 && row.source.length > 0, row.key);
    assert.ok(['more', 'less', 'neither'].includes(row.better), row.key);
    assert.equal(typeof row.unit, 'string', row.key);
  };
  levers.forEach(lever_members);
  readings.forEach(reading_members);
  const judged = readings.filter((row) => row.judged).map((row) => row.key);
  assert.ok(judged.includes('feedline.arrives_pct') && judged.includes('feedline.swr_at_radio'));
  for (const key of judged) {
    for (const end of ['limit', 'ease']) {
      const row = levers.find((lever) => lever.key === `${key}.${end}`);
      assert.ok(row, `${key}.${end}`);
      assert.equal(row.usual, true, row.key);
    }
  }
  for (const check of checks) {
    assert.ok(check.question.endsWith('?'), check.key);
    check.inputs.forEach(lever_members);
    check.results.forEach(reading_members);
    for (const input of check.inputs) {
      if (input.from_plan) assert.ok([...levers, ...readings].some((row) => row.key === input.from_plan), input.key);
    }
    for (const result of check.results) if (result.put_into) assert.ok(keys_of(levers).includes(result.put_into), result.key);
  }
  const demo_levers = Object.keys(ask(['--evaluate', demo]).levers);
  for (const key of demo_levers) assert.ok(keys_of(levers).includes(key), key);
  console.log(`  ${levers.length} levers, ${readings.length} readings, ${checks.length} checks`);
});

/** A first question for each check of a list, for the test that asks them all. */
const first_of_each = (questions) => Object.fromEntries(questions.filter((row) => row.check).reverse()
  .map(({ check, inputs, cases }) => [check, [{ ...inputs, ...cases[0].set }, cases[0].expect]]));

test('every check answers, and says what it needs', () => {
  const asked = {
    ...first_of_each(power), ...first_of_each(sky), ...asked_antenna, ...asked_safety,
    // 2 m of AWG 12 there and back at 20 A and 20 C: 20.84 milliohm (ASTM B258, IEC 60028), 0.4169 V
    'battery.key_down': [{ capacity_ah: '20', chemistry: 'lifepo4', key_down_a: '20 A', wire: 'awg12', length_m: '2 m', wire_c: '20', contacts_ohm: '0' }, { lead_v: [0.4169, 0.0001] }],
    'battery.charger': [{ capacity_ah: '20 Ah', missing_pct: '50', charger_a: '5 A', chemistry: 'lifepo4' }, { missing_ah: [10, 1e-9], bulk_h: [2, 0.2] }],
    // root law by hand: 2 A + 1.6 A x sqrt(W), so 13.31 A at 50 W
    'radio.two_readings': [{ low_w: '25', low_a: '10', high_w: '100', high_a: '18', full_power_w: '100', wanted_w: '50' }, { wanted_a: [13.3137, 0.0001], keyed_idle_a: [2, 1e-9] }],
    // 200 ft that read 1.288 with nothing on the end: 9 dB one way, measured at 432 MHz by a mailing list's author
    'feedline.roll_loss': [{ swr: '1.288', length_m: '200ft', cable: 'rg213', frequency_mhz: '50' }, { loss_db: [9, 0.007] }],
    // capacitance of 50 ohm and 0.66: 101.08 pF/m (worked out apart; the maker prints 101), 38 g/m in a parameter table
    'feedline.cable_data': [{ cable: 'rg58c', frequency_mhz: '10' }, { per_100ft_db: [1.4, 0.05], capacitance_pf: [101, 0.5], weight_g: [38, 1e-9], z0_ohm: [50, 1e-9] }],
    ...first_of_each(feedline),
    'feedline.decibels': [{ loss_db: '3', power_w: '100W' }, { arrives_pct: [50.1, 0.05], arrives_w: [50.1, 0.05], lost_w: [49.9, 0.05], s_units: [0.5, 1e-12] }],
    // quarter wave at 7.1 MHz, velocity factor 0.66: 6.967 m
    'feedline.electrical_length': [{ frequency_mhz: '7100kHz', length_m: '6.967', cable: 'rg58c' }, { quarter_wave_m: [6.967, 0.0005], wavelengths: [0.25, 2e-5] }],
  };
  for (const check of ask(['--checks'])) {
    const [inputs, expect] = asked[check.key] ?? assert.fail(`${check.key} is not asked here`);
    const answer = ask(['--check', check.key, ...sets(inputs)]);
    check_shape(answer, 'check');
    assert.equal(answer.check, check.key);
    assert.equal(answer.question, check.question);
    assert.deepEqual(Object.keys(answer.levers), keys_of(check.inputs));
    assert.deepEqual(Object.keys(answer.readings), keys_of(check.results));
    for (const [key, [wanted, tolerance]] of Object.entries(expect)) {
      const off = Math.abs(answer.readings[key].value - wanted);
      console.log(`  ${check.key}, ${key}: ${answer.readings[key].value}, wanted ${wanted} within ${tolerance}`);
      assert.ok(off <= tolerance, key);
    }
    const nothing = ask(['--check', check.key]);
    check_shape(nothing, 'check');
    for (const [key, row] of Object.entries(nothing.readings)) if (row.value === null) assert.notEqual(row.reason, '', key);
  }
});

test('errors are one line that names what is wrong', () => {
  refused(['--evaluate', demo, '--set', 'feedline.lenght_m=5'], 'feedline.lenght_m');
  refused(['--evaluate', demo, '--set', 'feedline.length_m=many'], 'feedline.length_m');
  refused(['--evaluate', demo, '--set', 'feedline.length_m=5 W'], 'feedline.length_m');
  refused(['--evaluate', demo, '--set', 'feedline.length_m=600ft'], 'feedline.length_m');
  refused(['--evaluate', demo, '--set', 'feedline.length_m='], 'feedline.length_m');
  refused(['--evaluate', demo, '--set', 'antenna.frequency_mhz=1e999'], 'antenna.frequency_mhz');
  refused(['--evaluate', demo, '--set', 'antenna.frequency_mhz=144 MHz'], 'antenna.frequency_mhz');
  refused(['--evaluate', demo, '--set', 'feedline.cable=rg999'], 'feedline.cable');
  refused(['--evaluate', demo, '--set', `feedline.length_m=${'9'.repeat(100_000)}`], 'feedline.length_m');
  refused(['--evaluate', demo, '--set', 'feedline.length_m'], 'feedline.length_m');
  refused(['--evaluate', demo, '--set'], '--set');
  refused(['--evaluate', demo, '--quiet'], '--quiet');
  refused(['--evaluate'], '--evaluate');
  refused(['--check'], '--check');
  refused(['--check', 'feedline.no_such'], 'feedline.no_such');
  refused(['--check', 'feedline.decibels', '--set', 'loss=3'], 'loss');
  refused(['--check', 'feedline.decibels', '--set', 'loss_db=three'], 'loss_db');
  refused(['--check', 'feedline.decibels', '--set', 'loss_db=101'], 'loss_db');
  refused(['--check', 'feedline.roll_loss', '--set', 'far_end=ajar'], 'far_end');
  refused(['--levers', 'all'], '--levers');
  refused(['--everything'], '--everything');
  refused(['a.json'], 'a.json');
});

test('the help names every verb', () => {
  const help = run(['--help']);
  assert.equal(help.status, 0);
  for (const verb of ['--evaluate', '--check', '--levers', '--readings', '--checks', '--set']) assert.ok(help.out.includes(verb), verb);
});

test('files that are none are refused by name, quickly', (t) => {
  const { path, file } = folder(t);
  const head = '{"groundsheet": 1, "kind": "outing", "levers": ';
  const bad = {
    'a missing file': join(path, 'missing.json'),
    'a folder': path,
    'an empty file': file(''),
    'blanks': file(' \n\t\n'),
    '10 MB of zeros': file(Buffer.alloc(10_000_000)),
    '10 MB of the digit 0': file('0'.repeat(10_000_000)),
    'nested 20 000 deep': file(head + '['.repeat(20_000) + ']'.repeat(20_000) + '}'),
    'nested 20 000 deep and never closed': file('{"a":'.repeat(20_000)),
    'truncated': file(`${head}{"feedline.length_m": 1`),
    'not JSON': file('levers = 5\n'),
    'a list': file('[1, 2]'),
    'a number': file('17'),
    'no kind': file('{"groundsheet": 1}'),
    'another kind': file('{"groundsheet": 1, "kind": "settings"}'),
    'a version in words': file('{"groundsheet": "one", "kind": "outing"}'),
    'a kind that is a number': file('{"groundsheet": 1, "kind": 7}'),
  };
  for (const [what, name] of Object.entries(bad)) {
    const began = performance.now();
    const said = refused(['--evaluate', name], name);
    console.log(`  ${what}: ${said.slice(name.length + 2)} (${Math.round(performance.now() - began)} ms)`);
  }
});

test('levers of the wrong type are left out, noted by key, and the rest is answered', (t) => {
  const levers = {
    'radio.full_power_w': [100], 'antenna.frequency_mhz': true, 'feedline.cable': 7, 'feedline.length_m': { m: 5 },
    'feedline.measured_swr': -3, 'feedline.roll_loss_pct': 140,
  };
  const wrong = Object.keys(levers).filter((key) => key !== 'feedline.roll_loss_pct');
  const name = folder(t).outing(levers);
  const { status, out, err } = run(['--evaluate', name]);
  assert.equal(status, 0);
  const answer = JSON.parse(out);
  check_shape(answer, 'outlook');
  assert.equal(answer.levers['feedline.roll_loss_pct'].value, 140);
  const lines = err.trim().split('\n');
  assert.equal(lines.length, wrong.length, err);
  for (const key of wrong) {
    assert.ok(lines.some((line) => line.startsWith(`${name}: ${key}: `)), key);
    assert.notEqual(answer.levers[key].from, 'yours');
  }
});

test('levers as a list are no levers', (t) => {
  const name = folder(t).file('{"groundsheet": 1, "kind": "outing", "levers": [1, 2]}');
  const { status, out, err } = run(['--evaluate', name]);
  assert.equal(status, 0);
  assert.match(err, /^[^\n]*levers[^\n]*\n$/);
  check_shape(JSON.parse(out), 'outlook');
});
