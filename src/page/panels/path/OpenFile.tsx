// A lesson file given by hand: chosen with a button, or dropped anywhere on the page.
import './drop.css';
import { useEffect, useRef, useState } from 'react';
import { say } from '../../../words/say';
import { usePageStore } from '../common/pageStore';
import { useLeave } from './leaving';

function useOpenFile(): (file: File) => void {
  const store = usePageStore();
  const leave = useLeave();
  const read = async (file: File): Promise<void> => {
    try {
      await store.getState().openFile(file.name, await file.text());
    } catch (error) {
      store.getState().reportFailure(say('failure.read', { message: error instanceof Error ? error.message : String(error) }));
    }
  };
  return (file) => leave(() => void read(file));
}

export function OpenFile() {
  const open = useOpenFile();
  const field = useRef<HTMLInputElement>(null);
  return (
    <>
      <button type="button" className="btn" onClick={() => field.current?.click()}>
        {say('path.openFile')}
      </button>
      <input
        ref={field}
        type="file"
        accept=".json,application/json"
        hidden
        data-lesson-file
        onChange={(event) => {
          const file = event.target.files?.[0];
          event.target.value = '';
          if (file !== undefined) open(file);
        }}
      />
    </>
  );
}

const holdsFile = (event: DragEvent): boolean => event.dataTransfer?.types.includes('Files') === true;

/** Takes a file dropped anywhere, and says so while it hovers. */
export function FileDrop() {
  const open = useOpenFile();
  const [hovering, setHovering] = useState(false);
  const latest = useRef(open);
  useEffect(() => {
    latest.current = open;
  });
  useEffect(() => {
    const over = (event: DragEvent): void => {
      if (!holdsFile(event)) return;
      event.preventDefault();
      setHovering(true);
    };
    const left = (event: DragEvent): void => {
      if (event.relatedTarget === null) setHovering(false);
    };
    const dropped = (event: DragEvent): void => {
      if (!holdsFile(event)) return;
      event.preventDefault();
      setHovering(false);
      const file = event.dataTransfer?.files[0];
      if (file !== undefined) latest.current(file);
    };
    window.addEventListener('dragover', over);
    window.addEventListener('dragleave', left);
    window.addEventListener('drop', dropped);
    return () => {
      window.removeEventListener('dragover', over);
      window.removeEventListener('dragleave', left);
      window.removeEventListener('drop', dropped);
    };
  }, []);
  return hovering ? (
    <div className="file-drop" aria-hidden="true">
      <p>{say('path.drop')}</p>
    </div>
  ) : null;
}
