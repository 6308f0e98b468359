/** What a session's plan could do better, as findings with reason, suggestion and source. */
export { programmeFindings } from './findings.ts';
