import { mkdir, readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterBuild, type BuiltSite } from './after-build.ts';
import { headersText, htaccessText, nginxText } from './header-files.ts';
import { type HeaderRule, headerRules } from './header-rules.ts';

/** The policy that a page carries; the build gives all of them the same. */
export function policyOf(html: string): string {
  const [, policy] = /<meta http-equiv="content-security-policy" content="([^"]*)"/i.exec(html) ?? [];
  if (policy === undefined) throw new Error('policyOf: wish a page with a content policy, got one without');
  return policy.replace(/;?\s*$/, ';');
}

async function rulesOf(root: string, base: string): Promise<readonly HeaderRule[]> {
  const entries = await readdir(root, { withFileTypes: true });
  const seen = entries.filter(({ name }) => !/^_headers$|^\.|^hosting$/.test(name));
  return headerRules({
    base,
    policy: policyOf(await readFile(join(root, 'index.html'), 'utf8')),
    folders: seen.filter((entry) => entry.isDirectory()).map(({ name }) => name),
    files: seen.filter((entry) => entry.isFile() && entry.name !== 'index.html').map(({ name }) => name),
  });
}

async function writeHeaderFiles({ root, base }: BuiltSite): Promise<void> {
  const rules = await rulesOf(root, base);
  await writeFile(join(root, '_headers'), headersText(rules));
  await writeFile(join(root, '.htaccess'), htaccessText(rules, base));
  await mkdir(join(root, 'hosting'), { recursive: true });
  await writeFile(join(root, 'hosting/nginx.conf'), nginxText(rules, base));
}

/** Writes files by which hosts learn what headers to send: the pages’ policy, and which folders may be framed by whom. */
export const hosting = () => afterBuild('hosting', writeHeaderFiles);
