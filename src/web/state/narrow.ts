import { useEffect, useState } from "preact/hooks";

/** True on a page as narrow as a phone's, and followed when it is turned. */
export const useNarrow = (): boolean => {
  const [narrow, setNarrow] = useState(() => matchMedia("(max-width: 640px)").matches);
  useEffect(() => {
    const query = matchMedia("(max-width: 640px)");
    const look = () => setNarrow(query.matches);
    query.addEventListener("change", look);
    return () => query.removeEventListener("change", look);
  }, []);
  return narrow;
};
