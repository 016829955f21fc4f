// Load on the main job: checks of the deck oven, one that complies and one that does not.
// Bounded in count and time; loopback unless BASE_URL says otherwise.
import { check } from 'k6';
import http from 'k6/http';
import type { Options } from 'k6/options';

interface Answer {
  verdict: string;
  findings: { check: string; verdict: string }[];
}

const baseUrl: string = __ENV.BASE_URL ?? 'http://127.0.0.1:8080';

export const options: Options = {
  scenarios: {
    checks: {
      executor: 'shared-iterations',
      vus: 8,
      iterations: 20000,
      maxDuration: '60s',
    },
  },
  thresholds: {
    checks: ['rate==1'],
    http_req_failed: ['rate==0'],
  },
};

function oven(lengthM: number): string {
  return JSON.stringify({
    reference: 'DB1/4 deck oven',
    edition: 'bs7671-2018-a4',
    stage: 'design',
    supply: {
      point: 'board', earthing: 'TN-C-S', phases: 1, lineToEarthVoltageV: 230, ownership: 'public',
      basis: 'calculated-hot', loopImpedanceOhm: 0.28, maximumFaultCurrentA: 1550, voltageDropPercent: 0.8,
    },
    load: { kind: 'resistive', use: 'other', designCurrentA: 26.1, powerFactor: 1, connection: 'fixed' },
    cable: {
      construction: 'flat-twin-and-earth', conductor: 'copper', insulation: 'thermoplastic-70',
      lineCsaMm2: 6, protectiveCsaMm2: 2.5, lengthM, arrangement: 'radial',
      installation: { referenceMethod: 'C', ambientTemperatureC: 30, groupedCircuits: 1 },
    },
    device: {
      standard: 'IEC 60898-1', characteristic: 'B', ratedCurrentA: 32, breakingCapacityA: 6000,
      energyClass: 3, poles: 1,
    },
  });
}

const good: string = oven(22);
const bad: string = oven(70);
const headers = { 'Content-Type': 'application/json' };

export default function run(): void {
  const failing: boolean = __ITER % 10 === 0;
  const response = http.post(`${baseUrl}/v1/circuit-checks`, failing ? bad : good, { headers });
  const answer = response.json() as unknown as Answer;
  check(response, {
    'is answered': (r) => r.status === 200,
    'has the right verdict': () => answer.verdict === (failing ? 'does-not-comply' : 'complies'),
    'has every finding': () => answer.findings.length === 9,
  });
}
