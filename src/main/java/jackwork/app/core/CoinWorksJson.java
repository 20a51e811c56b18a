package jackwork.app.core;

import jackwork.app.wire.Json;
import jackwork.check.Subject;
import jackwork.design.Design;
import jackwork.design.Handling;
import jackwork.geometry.Point;
import jackwork.motion.coin.CoinLimits;
import jackwork.motion.coin.CycleRig;
import jackwork.motion.coin.CycleStage;
import jackwork.motion.model.Mechanism;
import jackwork.motion.model.MechanismKind;
import jackwork.parts.Assembly;
import jackwork.parts.CoinWorks;
import jackwork.stock.Uncertain;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** What a coin's whole visit hangs on, in the mechanism's JSON: works, coins, visitor, what touches, what counts. */
final class CoinWorksJson {

    private final Design design;
    private final Assembly assembly;
    private final CoinWorks works;
    private final CycleRig rig;

    private CoinWorksJson(Design design, Assembly assembly) {
        this.design = design;
        this.assembly = assembly;
        this.works = assembly.coinWorks();
        this.rig = CycleRig.of(assembly, 0, 0);
    }

    static void put(Design design, Assembly assembly, ObjectNode root) {
        CoinWorksJson json = new CoinWorksJson(design, assembly);
        root.set("coinWorks", json.works());
        root.set("coins", json.coins());
        root.set("visitor", json.visitor());
        root.set("touching", json.touching());
        root.set("contacts", json.contacts());
        root.set("cycle", json.cycle());
    }

    private ObjectNode works() {
        ObjectNode node = Json.object();
        node.put("kind", works.bucketWord());
        node.put("body", bucket());
        node.put("pin", works.pin());
        node.set("pivot", Json.point(works.pivot()));
        node.put("layer", works.layer());
        Json.put(node, "restDeg", Math.toDegrees(works.rest()), 9);
        Json.put(node, "tipDeg", Math.toDegrees(works.tip()), 9);
        ObjectNode slot = node.putObject("slot");
        slot.set("at", Json.point(works.slotAt()));
        Json.put(slot, "length", works.slotLength(), 6);
        Json.put(slot, "width", works.slotWidth(), 6);
        Json.put(node, "gap", assembly.coinGap(), 6);
        Json.put(node, "sideGap", works.sideGap(), 6);
        put(node, "heel", works.heel());
        put(node, "rise", works.rise());
        put(node, "toe", works.toe());
        put(node, "lip", works.lip());
        put(node, "strut", works.strut());
        put(node, "face", works.face());
        put(node, "tooth", works.tooth());
        put(node, "kicker", works.kicker());
        Json.put(node, "lowest", CycleRig.lowest(assembly), 6);
        return node;
    }

    private static void put(ObjectNode node, String name, @Nullable Point mark) {
        if (mark == null) {
            node.putNull(name);
        } else {
            node.set(name, Json.point(mark));
        }
    }

    private String bucket() {
        return assembly.body(works.bucket()).name();
    }

    private ArrayNode coins() {
        ArrayNode coins = Json.array();
        Subject.coins(design).forEach(coin -> {
            ObjectNode entry = coins.addObject();
            entry.put("code", coin.code());
            Json.put(entry, "diameter", coin.diameter(), 6);
            Json.put(entry, "leastAcross", coin.leastAcross(), 6);
            Json.put(entry, "radius", coin.radius(), 6);
            Json.put(entry, "thickness", coin.thickness(), 6);
            Json.put(entry, "mass", coin.mass(), 6);
            Json.put(entry, "play", works.slotLength() - coin.diameter(), 6);
        });
        return coins;
    }

    private ObjectNode visitor() {
        Handling handling = assembly.workshop().handlingOrGuess();
        ObjectNode node = Json.object();
        put(node, "pressForce", assembly.workshop().finger().comfortable());
        put(node, "pressSpeed", handling.pressSpeed());
        put(node, "dropSpeed", handling.dropSpeed());
        put(node, "coinMass", handling.coinMass());
        put(node, "tilt", handling.tilt());
        return node;
    }

    private static void put(ObjectNode node, String name, Uncertain number) {
        ObjectNode entry = node.putObject(name);
        Json.put(entry, "value", number.value(), 6);
        Json.put(entry, "low", number.low(), 6);
        Json.put(entry, "high", number.high(), 6);
        entry.put("unit", number.unit());
        entry.put("basis", number.basis().words());
    }

    private ArrayNode touching() {
        ArrayNode touching = Json.array();
        rig.touching().forEach(part -> {
            ObjectNode entry = touching.addObject();
            entry.put("part", part.name());
            entry.put("body", assembly.body(assembly.bodyOf(part.name())).name());
            entry.put("layer", part.layer());
            entry.set("outline", Json.ring(rig.outline(part)));
        });
        rig.coinRods().forEach(rod -> {
            ObjectNode entry = touching.addObject();
            entry.put("part", rod.name());
            entry.put("body", assembly.body(rod.body()).name());
            entry.put("layer", works.layer());
            entry.set("at", Json.point(rod.at()));
            Json.put(entry, "radius", rod.radius(), 6);
        });
        return touching;
    }

    private ArrayNode contacts() {
        ArrayNode contacts = Json.array();
        double coinFriction = works.coinFriction().coefficient().value();
        double rebound = assembly.workshop().handlingOrGuess().rebound().value();
        rig.coinTouches()
                .forEach(part -> contacts.add(contact(
                        "coin",
                        part.name(),
                        coinFriction,
                        assembly.bodyOf(part.name()) == works.bucket()
                                ? works.rebound().value()
                                : rebound)));
        rig.coinRods()
                .forEach(rod -> contacts.add(contact(
                        "coin",
                        rod.name(),
                        coinFriction,
                        rod.body() == works.bucket() ? works.rebound().value() : rebound)));
        contacts.add(contact("coin", "coin", CoinLimits.COIN_ON_COIN, rebound));
        double rubbing = works.catchFriction().coefficient().value();
        rig.catchTouches()
                .forEach(pair -> contacts.add(
                        contact(pair.ofLever().name(), pair.ofBucket().name(), rubbing, MechanismKind.WOOD_ON_WOOD)));
        return contacts;
    }

    private static ObjectNode contact(String a, String b, double friction, double rebound) {
        ObjectNode entry = Json.object();
        entry.put("a", a).put("b", b);
        Json.put(entry, "friction", friction, 6);
        Json.put(entry, "rebound", rebound, 6);
        return entry;
    }

    private ObjectNode cycle() {
        ObjectNode node = Json.object();
        ArrayNode stages = node.putArray("stages");
        for (CycleStage stage : CycleStage.values()) {
            stages.add(stage.name().toLowerCase(Locale.ROOT));
        }
        node.put("figureFolded", rig.folds());
        Json.put(node, "step", CoinLimits.STEP, 9);
        Json.put(node, "stillBelow", 2 * Mechanism.GRAVITY * CoinLimits.STEP, 6);
        Json.put(node, "outlineWithin", CoinLimits.OUTLINE, 6);
        Json.put(node, "patience", CoinLimits.PATIENCE, 6);
        Json.put(node, "reaction", CoinLimits.REACTION, 6);
        Json.put(node, "hold", CoinLimits.HOLD, 6);
        Json.put(node, "secondPress", CoinLimits.SECOND_PRESS, 6);
        Json.put(node, "apart", CoinLimits.APART, 6);
        Json.put(node, "atLedge", CoinLimits.AT_LEDGE, 6);
        Json.put(node, "down", CoinLimits.DOWN, 6);
        Json.put(node, "back", CoinLimits.BACK, 6);
        Json.put(node, "locked", CoinLimits.LOCKED, 6);
        Json.put(node, "held", CoinLimits.HELD, 6);
        return node;
    }
}
