/** Where a check is explained. */

/** Address of the page a check is explained on; undefined until the project has a published home. */
export function docsOf(_check: string): string | undefined {
  return undefined;
}
