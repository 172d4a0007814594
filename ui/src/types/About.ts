export type About = { version: string; data_folder: string };
