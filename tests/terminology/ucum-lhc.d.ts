declare module '@lhncbc/ucum-lhc' {
  interface UcumLhcUtils {
    validateUnitString(unit: string): { readonly status: 'valid' | 'invalid' | 'error' };
  }
  export const UcumLhcUtils: { getInstance(): UcumLhcUtils };
}
