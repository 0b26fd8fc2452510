import { describe, expect, it } from 'vitest';
import { howToOf, howToOrder } from '../../app/guide/pages';
import { glossary } from '../../app/words/guide/glossary';
import { howTos } from '../../app/words/guide/how-to';

describe('the book beside the rooms', () => {
  it('has every page in its list once', () => {
    expect([...howToOrder].sort()).toEqual(Object.keys(howTos).sort());
    for (const page of Object.values(howToOf)) expect(howToOrder).toContain(page);
  });

  it('puts the words in the order of the alphabet, each once', () => {
    const words = glossary.map(({ word }) => word.toLowerCase());
    expect(words).toEqual([...new Set(words)].sort((a, b) => a.localeCompare(b)));
  });
});
