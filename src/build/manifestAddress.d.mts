export declare const DEVELOPMENT_ADDRESS: string;
export declare function manifestAddress(manifest: string, address: string, version?: string): string;
