export type About = { version: string; dataFolder: string };
