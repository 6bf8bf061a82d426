import { cpus } from 'node:os';
import { benchDc } from './bench-dc.ts';
import { benchSurvey } from './bench-survey.ts';

console.log(`Processor: ${cpus()[0]?.model ?? 'unknown'}, Node ${process.version}\n`);
benchSurvey();
benchDc();
