/** Between two pieces of work the page answers and draws. */
export const breath = (): Promise<void> => new Promise((done) => setTimeout(done));
