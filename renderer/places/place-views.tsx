import { type ComponentType } from 'react';
import { type Place } from '../app/desk-window.ts';
import { BriefPlace } from './brief/BriefPlace.tsx';
import { CheckPlace } from './check/CheckPlace.tsx';
import { HandOverPlace } from './hand-over/HandOverPlace.tsx';
import { LayOutPlace } from './lay-out/LayOutPlace.tsx';
import { MakePlace } from './make/MakePlace.tsx';
import { StakeOutPlace } from './stake-out/StakeOutPlace.tsx';

export const PLACE_VIEWS: Readonly<Record<Place, ComponentType>> = {
  brief: BriefPlace,
  'lay-out': LayOutPlace,
  check: CheckPlace,
  make: MakePlace,
  'stake-out': StakeOutPlace,
  'hand-over': HandOverPlace,
};
