/** Version of the library, as it stands in worked checks. */
export const version = "0.1.0";
