import { Code } from './Code.tsx';

interface HeadProps {
  readonly question: string;
  /** The reader’s own: pasture, place and day. Without it there is room to write. */
  readonly title?: string | undefined;
  readonly by?: string | undefined;
  readonly office?: string | undefined;
  readonly isBehind?: boolean;
}
export const Head = ({ question, title, by, office, isBehind = false }: HeadProps) => (
  <>
    <div class="paper-head">
      <b>{office === undefined ? 'Holdwater' : `Holdwater, ${office}`}</b>
      {title === undefined ? (
        <>
          <span>Place</span>
          <span>Date</span>
        </>
      ) : (
        <span class="paper-whose">{title}</span>
      )}
      {by === undefined ? <span>Adviser</span> : <span class="paper-by">By {by}</span>}
    </div>
    <h1>{isBehind ? `${question} The working` : question}</h1>
  </>
);

/** More than any page has room for: what does not fit is cut off below. */
const mostLines = 40;

/** Room to write in, as much as the answer leaves. */
export const Agreed = () => (
  <div class="paper-agreed">
    <span>What we agreed</span>
    {Array.from({ length: mostLines }, (_, index) => (
      <span key={String(index)} />
    ))}
  </div>
);

const told = {
  empty: 'The code opens the empty questions.',
  record: 'The code opens these answers. The record is not in it: send its file along.',
  numbers: 'The code opens these numbers as they stand.',
  disk: 'Made from a copy on a disk, which has no address that another device could open: so no code stands here.',
};

export const Foot = ({
  address,
  link,
  isEmpty,
  hasRecord,
}: {
  readonly address: string | undefined;
  readonly link: string;
  readonly isEmpty: boolean;
  readonly hasRecord: boolean;
}) => (
  <div class="paper-foot">
    {address !== undefined && <Code link={isEmpty ? address : `${address}?${link}`} />}
    <div>
      {address !== undefined && (
        <p>
          <b class="paper-address">{address.replace(/^https?:\/\//, '').replace(/\/$/, '')}</b>
        </p>
      )}
      <p>
        {address === undefined ? told.disk : isEmpty ? told.empty : hasRecord ? told.record : told.numbers} A planning estimate: your ground, your
        stock and your year decide.
      </p>
    </div>
    <p class="paper-again">Look again on</p>
  </div>
);
