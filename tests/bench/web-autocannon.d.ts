/** What is used here of the load generator, which comes without types. */
declare module "autocannon" {
  interface Options {
    readonly url: string;
    readonly connections: number;
    /** s. */
    readonly duration: number;
  }
  interface Result {
    readonly requests: { readonly average: number; readonly total: number };
    /** ms, whole. */
    readonly latency: { readonly p50: number; readonly p99: number };
    readonly errors: number;
    readonly timeouts: number;
    readonly non2xx: number;
  }
  export default function autocannon(options: Options): Promise<Result>;
}
