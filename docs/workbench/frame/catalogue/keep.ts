import type { Catalogue } from 'seahail/locale';

/** Catalogues that scripts of their own have brought, by language. */
const kept = globalThis as { seahailCatalogues?: Record<string, Catalogue> };

export function keep(catalogue: Catalogue): void {
  kept.seahailCatalogues = { ...kept.seahailCatalogues, [catalogue.lang]: catalogue };
}

export function keptFor(lang: string): Catalogue | undefined {
  return kept.seahailCatalogues?.[lang];
}
