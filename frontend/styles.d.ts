/* Styles that a page of ours brings along; the bundler takes them. */
declare module '*.css';
