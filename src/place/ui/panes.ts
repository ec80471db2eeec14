// What a tap at the gate opens: fetched a moment behind the gate itself.
export { HayPane, HeightPane, RainPane } from './GatePanes.tsx';
export { MovedPane, WentPane } from './MovedPane.tsx';
