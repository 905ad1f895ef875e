import { describe, expect, it } from 'vitest';
import type { OutcomesService } from '../../src/pipeline/index.js';
import { createServiceDouble } from '../http/service-double.js';
import { REPORTING, reported, rows, YEAR } from '../measure/reported.js';
import { run } from './run.js';

const REPORT = reported(rows(40, { enBloc: 'yes' }));

const asking = (readMeasureReport: OutcomesService['readMeasureReport']) => ({
  outcomes: (read: (service: OutcomesService) => Promise<0 | 1 | 2 | 3 | 129 | 130>) =>
    read(createServiceDouble({ readMeasureReport })),
});

describe('the command outcomes measure-report', () => {
  it('prints the report of the period', async () => {
    const work = asking(({ from, to, filters, by }) => {
      expect({ from, to, filters, by }).toEqual({
        from: YEAR.from,
        to: YEAR.to,
        filters: {},
        by: ['organ'],
      });
      return Promise.resolve({ kind: 'found', report: REPORT });
    });
    const args = ['--from', YEAR.from ?? '', '--to', YEAR.to ?? '', '--by', 'organ'];
    const { code, out, err } = await run(['outcomes', 'measure-report', ...args], {}, work);
    expect([code, err]).toEqual([0, '']);
    expect(JSON.parse(out)).toEqual(REPORT);
    expect(out).toContain(REPORTING.identifierBase);
  });

  it('says why there is none', async () => {
    const problem = {
      rule: 'period-too-fine',
      pointer: '/from',
      message: 'Where small counts are hidden, a period is made of whole years.',
      expected: 'the first day of a year',
    };
    const work = asking(() => Promise.resolve({ kind: 'invalid', problems: [problem] }));
    const days = ['--from', '2025-01-02', '--to', '2025-12-31'];
    const { code, out, err } = await run(['outcomes', 'measure-report', ...days], {}, work);
    expect([code, out]).toEqual([1, '']);
    expect(err).toContain(problem.message);
  });

  it.each([[[]], [['--from', '2025-01-01']], [['--to', '2025-12-31']]])(
    'is called wrongly without both its days: %j',
    async (days) => {
      const work = asking(() => Promise.reject(new Error('not asked')));
      const { code, out, err } = await run(['outcomes', 'measure-report', ...days], {}, work);
      expect([code, out]).toEqual([2, '']);
      expect(err).toContain('--from DAY and --to DAY');
    },
  );

  it('takes options alone', async () => {
    const work = asking(() => Promise.reject(new Error('not asked')));
    expect((await run(['outcomes', 'measure-report', 'x'], {}, work)).code).toBe(2);
  });
});
