import { describe, expect, it } from 'vitest';
import { type Route, routes } from '../contract/index.ts';
import { describeApi } from './open-api.ts';

type Json = Record<string, unknown>;
interface Operation {
  readonly operationId: string;
  readonly summary: string;
  readonly parameters: readonly { name: string; in: string; required: boolean; schema: Json }[];
  readonly requestBody?: { required: boolean; content: Record<string, { schema: Json }> };
  readonly responses: Record<string, { description: string; content: Record<string, { schema: Json }> }>;
}
const api = JSON.parse(JSON.stringify(describeApi('1.2.3'))) as {
  openapi: string;
  info: Json;
  paths: Record<string, Record<string, Operation>>;
  components: { schemas: Record<string, Json> };
};
const operations = Object.entries(api.paths).flatMap(([path, methods]) =>
  Object.entries(methods).map(([method, operation]) => ({ path, method, operation })),
);

/** Every keyword that JSON Schema 2020-12 knows and our shapes may use (json-schema.org, core and validation). */
const KEYWORDS = new Set(
  (
    'type properties required additionalProperties propertyNames items prefixItems minItems maxItems enum const anyOf oneOf allOf ' +
    'not $ref $defs description default format pattern minLength maxLength minimum maximum exclusiveMinimum ' +
    'exclusiveMaximum multipleOf contentEncoding readOnly title examples'
  ).split(' '),
);
const TYPES = ['string', 'number', 'integer', 'boolean', 'object', 'array', 'null'];

function faultsOf(schema: unknown, where: string): string[] {
  if (typeof schema === 'boolean') return [];
  if (typeof schema !== 'object' || schema === null || Array.isArray(schema)) return [`${where}: no schema`];
  const known = schema as Json;
  const unknown = Object.keys(known).filter((key) => !KEYWORDS.has(key));
  const types = [known.type ?? []].flat().filter((type) => !TYPES.includes(String(type)));
  const inner = [
    ...Object.entries((known.properties ?? {}) as Json),
    ...['items', 'not', 'additionalProperties', 'propertyNames'].flatMap((key) =>
      key in known ? [[key, known[key]]] : [],
    ),
    ...['anyOf', 'oneOf', 'allOf', 'prefixItems'].flatMap((key) =>
      ((known[key] ?? []) as unknown[]).map((it) => [key, it]),
    ),
  ] as [string, unknown][];
  return [
    ...unknown.map((key) => `${where}: ${key}`),
    ...types.map((type) => `${where}: type ${String(type)}`),
    ...inner.flatMap(([key, part]) => faultsOf(part, `${where}.${key}`)),
  ];
}

describe("the API's description", () => {
  it('is OpenAPI 3.1 with a title and a version', () => {
    expect(api.openapi).toMatch(/^3\.1\.\d+$/);
    expect(api.info).toMatchObject({ title: 'Gramwright', version: '1.2.3' });
  });

  it('has every route of the contract and no other', () => {
    const expected = Object.entries(routes as Record<string, Route>).map(
      ([name, route]) => `${route.method.toLowerCase()} ${route.path.replace(/:(\w+)/g, '{$1}')} ${name}`,
    );
    const described = operations.map(
      ({ path, method, operation }) => `${method} ${path} ${operation.operationId}`,
    );
    expect(described.sort()).toEqual(expected.sort());
  });

  it('declares each parameter of a path, required, and no parameter twice', () => {
    for (const { path, operation } of operations) {
      const named = [...path.matchAll(/\{(\w+)\}/g)].map((found) => found[1]);
      const inPath = operation.parameters.filter((it) => it.in === 'path');
      expect(
        inPath.map((it) => it.name),
        path,
      ).toEqual(named);
      expect(inPath.every((it) => it.required)).toBe(true);
      const keys = operation.parameters.map((it) => `${it.in} ${it.name}`);
      expect(new Set(keys).size).toBe(keys.length);
    }
  });

  it('gives each answer a description and a shape, and each POST and PUT a body', () => {
    for (const { path, method, operation } of operations) {
      expect(operation.summary, path).not.toBe('');
      for (const answer of Object.values(operation.responses)) expect(answer.description).not.toBe('');
      expect(operation.requestBody !== undefined, `${method} ${path}`).toBe(method !== 'get');
    }
  });

  it('uses only what JSON Schema knows', () => {
    const schemas = operations.flatMap(({ operation }) => [
      ...operation.parameters.map((it) => it.schema),
      ...Object.values(operation.requestBody?.content ?? {}).map((it) => it.schema),
      ...Object.values(operation.responses).flatMap((it) =>
        Object.values(it.content).map((part) => part.schema),
      ),
    ]);
    expect(schemas.length).toBeGreaterThan(100);
    expect([...schemas, ...Object.values(api.components.schemas)].flatMap((it) => faultsOf(it, '#'))).toEqual(
      [],
    );
  });

  it('refers only to what it has', () => {
    const refs = [...JSON.stringify(api).matchAll(/"\$ref":"([^"]+)"/g)].map((found) => found[1] ?? '');
    expect(refs.length).toBeGreaterThan(0);
    for (const ref of new Set(refs)) {
      expect(ref).toMatch(/^#\/components\/schemas\/\w+$/);
      expect(api.components.schemas[ref.split('/').at(-1) ?? '']).toBeDefined();
    }
  });

  it('says what a stamp is made of', () => {
    const body = api.paths['/api/people']?.post?.requestBody?.content['application/json']?.schema as {
      required: string[];
      properties: { stamp: { required: string[] } };
    };
    expect(body.required).toContain('stamp');
    // `device` has a default, so the sender may leave it out.
    expect(body.properties.stamp.required.sort()).toEqual(['at', 'by', 'id']);
  });
});
