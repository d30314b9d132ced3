export { version as VERSION } from '../../../package.json';
