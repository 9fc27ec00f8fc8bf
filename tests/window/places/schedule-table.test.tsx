import '../support/page.ts';
import { act } from 'react';
import { createRoot } from 'react-dom/client';
import { describe, expect, it } from 'vitest';
import { ScheduleTable } from '../../../renderer/parts/ScheduleTable.tsx';
import { type Table } from '../../../renderer/worker/protocol.ts';

const many: Table = {
  id: 'many', title: 'Many pieces', markColumn: 0,
  columns: [{ name: 'mark', figure: false, unit: null }, { name: 'length', figure: true, unit: 'in' }],
  rows: Array.from({ length: 40_000 }, (_, index) => [`R${String(index)}`, (index * 0.5).toFixed(4)]),
};

function show(chosen: string | null): { readonly host: HTMLElement; again(mark: string | null): void; end(): void } {
  const host = document.createElement('div');
  document.body.append(host);
  const root = createRoot(host);
  const again = (mark: string | null): void => { act(() => { root.render(<ScheduleTable table={many} choice={0} chosen={mark} onChoose={() => undefined} />); }); };
  again(chosen);
  return { host, again, end: () => { act(() => { root.unmount(); }); host.remove(); } };
}

const shownRows = (host: HTMLElement): HTMLTableRowElement[] => [...host.querySelectorAll<HTMLTableRowElement>('tbody tr[aria-rowindex]')];

describe('a schedule of 40 000 rows', () => {
  it('makes only the rows in sight, and says how many there are and which these are', () => {
    const { host, end } = show(null);
    expect(shownRows(host).length).toBeLessThan(60);
    expect(host.querySelector('table')!.getAttribute('aria-rowcount')).toBe('40001');
    expect(shownRows(host)[0]!.getAttribute('aria-rowindex')).toBe('2');
    end();
  });

  it('goes to the first row of a mark that is chosen elsewhere', () => {
    const { host, again, end } = show(null);
    again('R31234');
    const pane = host.querySelector<HTMLElement>('.schedule-pane')!;
    act(() => { pane.dispatchEvent(new Event('scroll')); });
    expect(host.querySelector('tr.chosen td')!.textContent).toBe('R31234');
    expect(host.querySelector('tr.chosen')!.getAttribute('aria-rowindex')).toBe('31236');
    expect(shownRows(host).length).toBeLessThan(60);
    end();
  });

  it('keeps its height: what is not made stands as empty room above and below', () => {
    const { host, again, end } = show(null);
    again('R20000');
    act(() => { host.querySelector('.schedule-pane')!.dispatchEvent(new Event('scroll')); });
    const gaps = [...host.querySelectorAll<HTMLElement>('.schedule-gap')].reduce((sum, gap) => sum + parseFloat(gap.style.height), 0);
    expect(gaps + shownRows(host).length * 44).toBe(40_000 * 44);
    end();
  });
});
