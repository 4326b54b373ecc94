// Everything the site says, as one plain text: for reading offline, for searching, for printing.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Comment, ReflectionKind } from 'typedoc';

export function allDocs(root, project) {
  const parts = [readFileSync(join(root, 'README.md'), 'utf8')];
  for (const document of project.documents ?? []) {
    parts.push(plain(Comment.combineDisplayParts(document.content)));
  }
  for (const room of project.children ?? []) parts.push(roomText(room));
  const text = parts.map((part) => part.trim()).join(`\n\n${'='.repeat(78)}\n\n`);
  // A link that only a page can follow is its words.
  return `${text.replace(/\{@link(?:code|plain)? ([^{}]*)\}/g, '$1')}\n`;
}

/** Figures as their words, and tables without the marks that only a browser needs; code as it is. */
function plain(markdown) {
  return markdown
    .split(/(^```[\s\S]*?^```)/m)
    .map((part, index) => (index % 2 === 1 ? part : plainProse(part)))
    .join('');
}

function plainProse(markdown) {
  return (
    markdown
      .replace(
        /<svg[\s\S]*?<title[^>]*>([\s\S]*?)<\/title>\s*<desc[^>]*>([\s\S]*?)<\/desc>[\s\S]*?<\/svg>/g,
        'Figure: $1. $2',
      )
      // A link to another page is its words here.
      .replace(/\[([^\]]+)\]\((?!https?:)[^)\s]*\)/g, '$1')
      .replace(/<\/?(?:div|span)\b[^>]*>/g, '')
      .replace(/&#(\d+);/g, (_, code) => String.fromCodePoint(Number(code)))
  );
}

function roomText(room) {
  const heading = `# seahail/${room.name}`;
  return [heading, commentText(room.comment), ...(room.children ?? []).map(entryText)]
    .filter(Boolean)
    .join('\n\n');
}

function entryText(entry) {
  const title = `## ${entry.name}`;
  if (entry.signatures) {
    return [
      title,
      ...entry.signatures.flatMap((signature) => [
        `    ${signatureText(signature)}`,
        commentText(signature.comment),
      ]),
    ]
      .filter(Boolean)
      .join('\n\n');
  }
  const members = membersOf(entry).map(memberText).join('\n');
  const type =
    entry.kind === ReflectionKind.TypeAlias && members === '' && entry.type ? `    ${entry.type}` : '';
  return [title, type, commentText(entry.comment), members].filter(Boolean).join('\n\n');
}

function signatureText(signature) {
  const parameters = (signature.parameters ?? []).map(
    ({ name, type, flags }) => `${name}${flags.isOptional ? '?' : ''}: ${type}`,
  );
  return `${signature.name}(${parameters.join(', ')}): ${signature.type}`;
}

function membersOf(entry) {
  return entry.children ?? entry.type?.declaration?.children ?? [];
}

function memberText(member) {
  const about = commentText(member.comment ?? member.signatures?.[0]?.comment).replace(/\s*\n\s*/g, ' ');
  const signature = member.signatures?.[0];
  const type = member.type ?? member.getSignature?.type ?? 'object';
  const head = signature
    ? signatureText(signature)
    : `${member.name}${member.flags.isOptional ? '?' : ''}: ${type}`;
  return `- ${head}${about === '' ? '' : `. ${about}`}`;
}

function commentText(comment) {
  if (!comment) return '';
  const text = (parts) => Comment.combineDisplayParts(parts).trim();
  const blocks = comment.blockTags.map(
    ({ tag, name, content }) => `${tag.slice(1)}${name ? ` ${name}` : ''}: ${text(content)}`,
  );
  return [text(comment.summary), ...blocks].filter(Boolean).join('\n\n');
}
