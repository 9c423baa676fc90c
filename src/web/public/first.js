// zod compiles its schemas into code, which the content security policy forbids. It looks here while it is loaded, so
// this runs before any module.
globalThis.__zod_globalConfig = { jitless: true };
