import type { Body } from "../mechanics/body/body.ts";
import { prepareBestStand } from "./choose-stand.ts";
import { chooseCloseView, chooseView } from "./choose-view.ts";
import type { FreeLimb } from "./marks/ghost.ts";
import { type Stand, STATED_STAND } from "./helper/pose-helper.ts";
import type { View } from "./picture/camera.ts";
import { type PreparedScene, prepareScene, type SceneInput } from "./scene.ts";

/** Scenes are large (two skins), views small. */
const SCENES_KEPT = 60;
const VIEWS_KEPT = 1200;

interface Kept {
  readonly scenes: Map<string, PreparedScene>;
  readonly views: Map<string, View>;
  readonly stands: Map<string, Stand>;
}
const kept = new WeakMap<Body, Kept>();

/** A scene with the key by which its views are kept. */
export interface KeptScene {
  readonly prepared: PreparedScene;
  readonly key: string;
  /** Where the helper stands for it. */
  readonly stand: Stand;
  readonly of: Kept;
}

/** The posed people and things of a picture: reached once for a body, a pose and a helper, then kept while the body lives. */
export function keptScene(input: SceneInput): KeptScene {
  let of = kept.get(input.body);
  if (of === undefined) {
    of = { scenes: new Map(), views: new Map(), stands: new Map() };
    kept.set(input.body, of);
  }
  const { configuration, specification, look, helper, helperBody } = input;
  const standKey = JSON.stringify([configuration, specification, look, helper, helperBody?.size]);
  const key = `${standKey}${input.closeUp !== undefined}`;
  const prepared = of.scenes.get(key) ?? preparedOf(of, standKey, input);
  keep(of.scenes, key, prepared, SCENES_KEPT);
  return { prepared, key, stand: of.stands.get(standKey) ?? STATED_STAND, of };
}

/** A close-up has the helper where the whole picture has it. */
function preparedOf(of: Kept, key: string, input: SceneInput): PreparedScene {
  const known = of.stands.get(key);
  if (known !== undefined) return prepareScene(input, known);
  const { closeUp, ...whole } = input;
  const { prepared, stand } = prepareBestStand(whole);
  keep(of.stands, key, stand, VIEWS_KEPT);
  return closeUp === undefined ? prepared : prepareScene(input, stand);
}

/** From where a picture is seen: searched once, then kept. */
export function keptView(
  scene: KeptScene,
  usual: View,
  close: { readonly hand: number; readonly radius: number } | null,
  moves: FreeLimb | null,
): View {
  const key = JSON.stringify([scene.key, usual, close, moves]);
  const view =
    scene.of.views.get(key) ??
    (close === null
      ? chooseView(scene.prepared, usual, moves)
      : chooseCloseView(scene.prepared, usual, close.hand, close.radius));
  keep(scene.of.views, key, view, VIEWS_KEPT);
  return view;
}

/** Puts an entry last and drops the one unused for longest. */
function keep<Value>(map: Map<string, Value>, key: string, value: Value, most: number): void {
  map.delete(key);
  map.set(key, value);
  const oldest = map.keys().next().value;
  if (map.size > most && oldest !== undefined) map.delete(oldest);
}
