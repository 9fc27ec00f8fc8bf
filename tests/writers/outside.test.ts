/** A reader that is not there is told by name, and fails a build server. */
import { describe, expect, test } from 'vitest';
import { missing } from '../support/outside.ts';

describe('an outside reader', () => {
  test('that is there is not spoken of', () => {
    expect(missing('ezdxf', true, undefined)).toBeNull();
    expect(missing('ezdxf', true, 'true')).toBeNull();
  });

  test.each([undefined, '', 'false'])('that is missing is named where CI is %s', (ci) => {
    expect(missing('ezdxf', false, ci)).toContain('ezdxf is not here');
  });

  test('that is missing where CI is set is a failure', () => {
    expect(() => missing('ezdxf', false, 'true')).toThrow('ezdxf is not here');
  });
});
