import pg from 'pg';

/**
 * A pool whose lost connections do not end the program: the driver emits an `error` on the
 * connection as well, beside failing what runs on it, and nobody listening would be fatal
 * (https://node-postgres.com/apis/pool#events).
 *
 * @param lost hears of connections that were lost while nobody used them
 */
export function openPool(config: pg.PoolConfig, lost: (error: Error) => void): pg.Pool {
  const pool = new pg.Pool(config);
  pool.on('error', lost);
  pool.on('connect', (client) => {
    client.on('error', () => {});
  });
  return pool;
}
