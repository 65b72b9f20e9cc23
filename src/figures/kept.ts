import type { Body } from "../mechanics/body/body.ts";
import { chooseCloseView, chooseView } from "./choose-view.ts";
import type { FreeLimb } from "./marks/ghost.ts";
import type { View } from "./picture/camera.ts";
import { type PreparedScene, prepareScene, type SceneInput } from "./scene.ts";

/** Scenes are large (two skins), views small. */
const SCENES_KEPT = 60;
const VIEWS_KEPT = 1200;

interface Kept {
  readonly scenes: Map<string, PreparedScene>;
  readonly views: Map<string, View>;
}
const kept = new WeakMap<Body, Kept>();

/** A scene with the key by which its views are kept. */
export interface KeptScene {
  readonly prepared: PreparedScene;
  readonly key: string;
  readonly of: Kept;
}

/** The posed people and things of a picture: reached once for a body, a pose and a helper, then kept while the body lives. */
export function keptScene(input: SceneInput): KeptScene {
  let of = kept.get(input.body);
  if (of === undefined) {
    of = { scenes: new Map(), views: new Map() };
    kept.set(input.body, of);
  }
  const { configuration, specification, look, helper, helperBody } = input;
  const key = JSON.stringify([
    configuration,
    specification,
    look,
    helper,
    helperBody?.size,
    input.closeUp !== undefined,
  ]);
  const prepared = of.scenes.get(key) ?? prepareScene(input);
  keep(of.scenes, key, prepared, SCENES_KEPT);
  return { prepared, key, of };
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
