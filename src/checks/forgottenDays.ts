/** So many days after its need a request is no longer asked after: the job is over. Common practice, no source. */
export const forgottenDays = 30;
