/**
 * Load on the main job: POST /v1/circuit-checks, the full answer and the minimal one in turns.
 *
 *   k6 run circuit-checks.ts
 *   BASE_URL=http://localhost:9090 VUS=4 ITERATIONS=2000 k6 run circuit-checks.ts
 *
 * It ends after ITERATIONS requests or after DURATION_S seconds, whichever comes first. Without BASE_URL it
 * loads this machine alone. Point it at nothing that you do not run yourself.
 */
import { check } from 'k6';
import http from 'k6/http';
import type { Options } from 'k6/options';
import exec from 'k6/execution';

const MOST_USERS = 64;
const MOST_ITERATIONS = 200_000;
const MOST_SECONDS = 600;

const baseUrl = (__ENV['BASE_URL'] ?? 'http://127.0.0.1:8080').replace(/\/+$/, '');

export const options: Options = {
  scenarios: {
    circuitChecks: {
      executor: 'shared-iterations',
      vus: whole('VUS', 8, MOST_USERS),
      iterations: whole('ITERATIONS', 10_000, MOST_ITERATIONS),
      maxDuration: `${whole('DURATION_S', 120, MOST_SECONDS)}s`,
      gracefulStop: '5s',
    },
  },
  thresholds: {
    // No answer may fail; the times are for reading, since they say as much of the machine.
    checks: ['rate==1'],
    http_req_failed: ['rate==0'],
    'http_req_duration{answer:full}': ['p(95)<250'],
    'http_req_duration{answer:minimal}': ['p(95)<250'],
  },
};

/** The deck oven of the README, its length varied so that no two neighbours are alike. */
function circuit(lengthM: number): string {
  return JSON.stringify({
    reference: 'DB1/4 deck oven',
    edition: 'bs7671-2018-a4',
    stage: 'design',
    supply: {
      point: 'board',
      earthing: 'TN-C-S',
      phases: 1,
      lineToEarthVoltageV: 230,
      ownership: 'public',
      basis: 'calculated-hot',
      loopImpedanceOhm: 0.28,
      maximumFaultCurrentA: 1550,
      voltageDropPercent: 0.8,
    },
    load: {
      kind: 'resistive',
      use: 'other',
      designCurrentA: 26.1,
      powerFactor: 1,
      connection: 'fixed',
    },
    cable: {
      construction: 'flat-twin-and-earth',
      conductor: 'copper',
      insulation: 'thermoplastic-70',
      lineCsaMm2: 6,
      protectiveCsaMm2: 2.5,
      lengthM,
      arrangement: 'radial',
      installation: { referenceMethod: 'C', ambientTemperatureC: 30, groupedCircuits: 1 },
    },
    device: {
      standard: 'IEC 60898-1',
      characteristic: 'B',
      ratedCurrentA: 32,
      breakingCapacityA: 6000,
      energyClass: 3,
      poles: 1,
    },
    premises: { locations: [] },
  });
}

// The members of an answer that are looked at here; the contract has them all.
interface Finding {
  check: string;
  verdict: string;
  working?: unknown[];
}

interface Answer {
  verdict: string;
  findings: Finding[];
}

/** Voltage drop lets this circuit be 55.8 m long: up to 54 m it complies, from 58 m it does not. */
const LENGTHS_M = [10, 22, 36, 54, 58, 70] as const;
const LONGEST_COMPLYING_M = 54;
const CHECKS_MADE = 9;

export default function checkOneCircuit(): void {
  const turn = exec.scenario.iterationInTest;
  const full = turn % 2 === 0;
  const lengthM = LENGTHS_M[Math.floor(turn / 2) % LENGTHS_M.length] ?? 22;
  const response = http.post(`${baseUrl}/v1/circuit-checks`, circuit(lengthM), {
    headers: {
      'Content-Type': 'application/json',
      Prefer: full ? 'return=representation' : 'return=minimal',
    },
    tags: { answer: full ? 'full' : 'minimal' },
    timeout: '10s',
  });
  const answer = response.status === 200 ? (response.json() as unknown as Answer) : null;
  const expected = lengthM <= LONGEST_COMPLYING_M ? 'complies' : 'does-not-comply';
  check(response, {
    'answers 200': (r) => r.status === 200,
    'gives the verdict of this length': () => answer?.verdict === expected,
    'makes every check': () => answer?.findings.length === CHECKS_MADE,
    'shows working exactly where asked': () =>
      answer !== null && answer.findings.some((each) => each.working !== undefined) === full,
    'carries an entity tag': (r) => r.headers['Etag'] !== undefined,
  });
}

/** A whole number from the environment, held between 1 and the most. */
function whole(name: string, usual: number, most: number): number {
  const written = __ENV[name];
  if (written === undefined) {
    return usual;
  }
  const value = Number(written);
  if (!Number.isInteger(value) || value < 1 || value > most) {
    throw new Error(`${name} must be a whole number from 1 to ${most}, not ${written}`);
  }
  return value;
}
