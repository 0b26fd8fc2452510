import { expect, it } from 'vitest';
import { faultReport } from '../../app/shell/fault-report';

it('a report tells where and how, and nothing of the garment', () => {
  const fault = new TypeError('no edge "Aunt Ida\'s waist" of 712.5 mm in garment 3f1c at x=28');
  const report = faultReport({
    where: 'Fit',
    fault,
    said: '',
    browser: 'Some browser 1',
    when: new Date('2026-03-04T12:00:00Z'),
  });
  expect(report).toContain('a fault in Fit');
  expect(report).toContain('TypeError: no edge … of # mm in garment # at #');
  expect(report).not.toMatch(/Ida|712|3f1c/);
  expect(report).toMatch(/fault-report\.test/);
});

it('what she says herself is in it as she says it', () => {
  const said = 'I took the waist in by 1/2 in';
  const report = faultReport({ where: 'Fit', fault: 'thrown words', said, browser: '', when: new Date(0) });
  expect(report).toContain(said);
});
