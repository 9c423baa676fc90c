import { z } from 'zod';
import { type Route, routes } from '../contract/index.ts';

type Json = Record<string, unknown>;

/** A shape as JSON Schema (draft 2020-12, the one of OpenAPI 3.1), as the sender writes it. */
function schemaOf(shape: z.ZodType, io: 'input' | 'output'): Json {
  const { $schema: _, ...schema } = z.toJSONSchema(shape, { io, unrepresentable: 'any' }) as Json;
  return schema;
}

const jsonContent = (schema: Json) => ({ 'application/json': { schema } });

function parametersOf(route: Route): Json[] {
  const inPath = [...route.path.matchAll(/:(\w+)/g)].map(([, name]) => ({
    name,
    in: 'path',
    required: true,
    schema: { type: 'string', pattern: '^[A-Za-z0-9-]{1,64}$' },
  }));
  if (!route.query) return inPath;
  const { properties = {}, required = [] } = schemaOf(route.query, 'input') as {
    properties?: Record<string, Json>;
    required?: string[];
  };
  const inQuery = Object.entries(properties).map(([name, schema]) => ({
    name,
    in: 'query',
    required: required.includes(name),
    schema,
  }));
  return [...inPath, ...inQuery];
}

const problemAnswer = {
  description: 'Refused',
  content: jsonContent({ $ref: '#/components/schemas/Problems' }),
};

function operationOf(name: string, route: Route): Json {
  const answer = route.media
    ? { [route.media]: { schema: { type: 'string', format: 'binary' } } }
    : jsonContent(schemaOf(route.output, 'output'));
  return {
    operationId: name,
    summary: route.summary,
    parameters: parametersOf(route),
    ...(route.input && {
      requestBody: { required: true, content: jsonContent(schemaOf(route.input, 'input')) },
    }),
    responses: { '2XX': { description: 'Done', content: answer }, default: problemAnswer },
  };
}

const value = { type: ['string', 'number', 'boolean', 'null'] };
const problemsSchema = {
  type: 'object',
  required: ['problems'],
  properties: {
    problems: {
      type: 'array',
      items: {
        type: 'object',
        required: ['code', 'where', 'says', 'mend'],
        properties: {
          code: { type: 'string' },
          where: { type: 'string' },
          found: value,
          allowed: value,
          source: { type: 'string' },
          parameters: { type: 'object', additionalProperties: value },
          says: { type: 'string' },
          mend: { type: 'string' },
        },
      },
    },
  },
};

/** The table of routes as OpenAPI 3.1. */
export function describeApi(version: string): Json {
  const paths: Record<string, Json> = {};
  for (const [name, route] of Object.entries(routes as Record<string, Route>)) {
    const path = route.path.replace(/:(\w+)/g, '{$1}');
    paths[path] = { ...paths[path], [route.method.toLowerCase()]: operationOf(name, route) };
  }
  return {
    openapi: '3.1.0',
    info: { title: 'Gramwright', version, license: { name: 'Apache-2.0', identifier: 'Apache-2.0' } },
    paths,
    components: { schemas: { Problems: problemsSchema } },
  };
}
