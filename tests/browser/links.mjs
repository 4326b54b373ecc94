import assert from 'node:assert/strict';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';

export const linkChecks = [
  {
    name: 'links: every link and anchor of the site leads somewhere, none to elsewhere but by name',
    async run({ site }) {
      const pages = readdirSync(site, { recursive: true, withFileTypes: true })
        .filter((entry) => entry.isFile() && entry.name.endsWith('.html'))
        .map((entry) => join(entry.parentPath, entry.name));
      const texts = new Map(pages.map((path) => [path, readFileSync(path, 'utf8')]));
      const anchors = new Map(
        [...texts].map(([path, text]) => [
          path,
          new Set([...text.matchAll(/\s(?:id|name)="([^"]+)"/g)].map(([, id]) => decoded(id))),
        ]),
      );
      const broken = new Set();
      let checked = 0;
      for (const [path, text] of texts) {
        for (const [, attribute, raw] of text.matchAll(/\s(href|src)="([^"]*)"/g)) {
          const link = decoded(raw);
          if (/^(?:data:|mailto:|geo:)/.test(link)) continue;
          checked++;
          if (/^(?:https?:)?\/\//.test(link)) {
            // Readers may follow a link elsewhere; no page may load anything from there.
            if (attribute === 'src') broken.add(`${relative(site, path)}: loads ${link}`);
            continue;
          }
          const [file, hash] = link.split('#');
          const target = file === '' ? path : resolve(dirname(path), decodeURIComponent(file));
          // A text that a browser would only show as it was typed, or save.
          if (file.endsWith('.md')) broken.add(`${relative(site, path)}: ${link} is no page`);
          if (!existsSync(target)) broken.add(`${relative(site, path)}: ${link}`);
          // What stands behind the # of a page of the workbench is a finding, not a place.
          const places = anchors.get(target);
          if (hash && places && !hash.includes('=') && !places.has(decodeURIComponent(hash)))
            broken.add(`${relative(site, path)}: ${link}`);
        }
      }
      assert.deepEqual([...broken], []);
      return `${checked} links of ${pages.length} pages`;
    },
  },
];

function decoded(text) {
  return text
    .replaceAll('&quot;', '"')
    .replaceAll('&#39;', "'")
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&amp;', '&');
}
