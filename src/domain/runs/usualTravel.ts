/** How fast one gets on in a city, and how many times as long as the crow flies the way is: common practice, no source. */
export const usualTravel = { kmPerHour: 20, detour: 1.3 };
