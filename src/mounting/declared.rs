//! The declaration of every datum of a mounting; [`fields`](super::fields) says what is made of it.

/// Hands the declaration of every part, place and field to the macro `$then`.
///
/// A field reads: doc comment, `name: Type = "heading words" ["other words"], Takes, NoneMeans;`.
/// Its heading in a sheet is the words of its place and then its own.
macro_rules! with_parts {
    ($then:ident) => {
        $then! {
            parts {
                /// The machine that the spindle belongs to.
                Machine {
                    /// Kind of machine, which decides how far its guard may be open.
                    kind: MachineKind = "kind" ["type"], Any, Refused;
                    /// Angle over which the guard leaves the wheel open.
                    guard_exposure: Angle = "guard exposure" ["guard opening"], ZeroOrMore, Refused;
                    /// Where the opening starts, above the horizontal through the spindle; negative below it.
                    guard_start: Angle = "guard start" [], Any, Absent;
                    /// Whether the work has to touch the wheel below the height of the spindle.
                    work_below_spindle: YesNo = "work below spindle" [], Any, Absent;
                    /// Side load on one point of the wheel's rim.
                    side_load: Force = "side load" ["side force"], Positive, Absent;
                    /// Greatest depth that the wheel cuts into the work.
                    depth_of_cut: Length = "depth of cut" ["cut depth", "cutting depth"], Positive, Absent;
                    /// Clearance kept from flanges and stabilisers to work, vice and magnet.
                    work_clearance: Length = "work clearance" ["clearance to work"], ZeroOrMore, Zero;
                }
                /// The spindle.
                Spindle {
                    /// Greatest speed that the spindle can reach, belts and inverter at their fastest.
                    greatest_speed: AngularVelocity = "greatest speed" ["max speed", "maximum speed", "top speed", "speed"], Positive, Refused;
                    /// Which way it turns, seen from the nut.
                    rotation: Rotation = "rotation" ["direction"], Any, Refused;
                    /// Greatest torque of cutting.
                    cutting_torque: Torque = "cutting torque" ["grinding torque"], Positive, Absent;
                    /// Time it takes from rest to its greatest speed.
                    run_up_time: Time = "run-up time" ["start time"], Positive, Absent;
                    /// Time it takes from its greatest speed to rest.
                    stop_time: Time = "stop time" ["braking time"], Positive, Absent;
                }
                /// The wheel, as it was when new.
                Wheel {
                    /// Shape, by its type number.
                    shape: Shape = "shape" ["type"], Any, Refused;
                    /// Outside diameter of the new wheel.
                    diameter: Length = "diameter" ["dia", "od", "outside diameter"], Positive, Refused;
                    /// Size the diameter is sold by, when the wheel is of a listed inch size.
                    nominal_diameter: Length = "nominal diameter" ["nominal size"], Positive, Absent;
                    /// Thickness.
                    thickness: Length = "thickness" ["width"], Positive, Refused;
                    /// Hole, as measured.
                    hole: Length = "hole" ["bore", "hole diameter", "bore diameter"], Positive, Refused;
                    /// Size the hole is sold by; nominal size of the spigot too.
                    nominal_hole: Length = "nominal hole" ["nominal bore"], Positive, Absent;
                    /// Smallest hole found in several directions.
                    smallest_hole: Length = "smallest hole" ["smallest bore"], Positive, Absent;
                    /// Largest hole found in several directions.
                    largest_hole: Length = "largest hole" ["largest bore"], Positive, Absent;
                    /// Rotational speed marked on the wheel.
                    marked_speed: AngularVelocity = "marked speed" ["marked rpm", "max rpm", "maximum rpm"], Positive, Absent;
                    /// Rim speed marked on the wheel.
                    marked_rim_speed: Velocity = "marked rim speed" ["marked peripheral speed", "max rim speed"], Positive, Absent;
                    /// How it is held; taken for flanges when nobody asks.
                    fastening: Fastening = "fastening" ["held by"], Any, Refused;
                    /// Abrasive.
                    abrasive: Abrasive = "abrasive" [], Any, Absent;
                    /// Bond.
                    bond: Bond = "bond" [], Any, Absent;
                    /// How its marking compares with the rest; a column `wheel marking` fills this in.
                    marking_says: MarkingSays = "marking says" [], Any, Absent;
                    /// Use-before date on the wheel.
                    use_before: Date = "use before" ["use before date", "use by", "use by date", "best before", "expiry", "expiry date", "expires"], Any, Absent;
                    /// Date of manufacture.
                    made: Date = "made" ["manufactured", "date of manufacture"], Any, Absent;
                    /// Width of the reducing bushing in the hole.
                    bushing_width: Length = "bushing width" ["bushing length", "bush width"], Positive, Absent;
                    /// Whether the bushing touches a flange.
                    bushing_touches_flange: YesNo = "bushing touches flange" [], Any, Absent;
                    /// Whether one bushing sits in another.
                    bushing_nested: YesNo = "bushing nested" ["bushings nested"], Any, Absent;
                    /// How much warmer than when measured the wheel gets at its hole.
                    warmer_by: TemperatureInterval = "warmer by" [], ZeroOrMore, Zero;
                    /// Thermal expansion of the wheel.
                    expansion: TemperatureCoefficient = "expansion" [], ZeroOrMore, Absent;
                    /// Tensile strength, by the wheel's maker.
                    tensile_strength: Pressure = "tensile strength" ["strength"], Positive, Absent;
                    /// Density.
                    density: MassDensity = "density" [], Dense, Absent;
                    /// Poisson's ratio.
                    poisson_ratio: Ratio = "poisson ratio" ["poisson's ratio", "poisson"], UnderHalf, Absent;
                    /// Factor against bursting asked for: bursting speed over speed, squared.
                    burst_factor: Ratio = "burst factor" ["bursting factor", "factor against bursting"], OneOrMore, Absent;
                    /// Modulus of elasticity, in bending.
                    modulus: Pressure = "modulus" ["modulus of elasticity", "elastic modulus"], Positive, Absent;
                    /// Bending stress allowed: flexural strength of the bond over a factor.
                    allowed_bending: Pressure = "allowed bending stress" ["allowed bending", "allowable bending stress"], Positive, Absent;
                    /// Mass.
                    mass: Mass = "mass" [], Positive, Absent;
                    /// Greatest pressure of the flanges' lands that its maker allows.
                    land_pressure: Pressure = "greatest land pressure" ["land pressure limit"], Positive, Absent;
                }
                /// A flange: the fixed one of the hub or the loose one.
                Flange {
                    /// Kind, which decides the table it is judged by.
                    kind: FlangeKind = "kind" ["type"], Any, Refused;
                    /// Outside diameter of the face that bears on the wheel.
                    diameter: Length = "diameter" ["dia", "od", "outside diameter"], Positive, Refused;
                    /// Width of the land that bears on the wheel, on one side.
                    land: Length = "land" ["land width", "bearing width"], Positive, Refused;
                    /// Depth of the recess inside the land.
                    recess: Length = "recess" ["recess depth", "relief", "relief depth"], ZeroOrMore, Zero;
                    /// Width of the undercut at the hole, on one side.
                    undercut: Length = "undercut" [], ZeroOrMore, Zero;
                    /// Thickness of the plate at the hole; of adaptor flanges with the pilot.
                    thickness_at_hole: Length = "thickness at hole" ["thickness", "thickness at bore"], Positive, Refused;
                    /// Thickness of the plate at the edge of the recess.
                    thickness_at_edge: Length = "thickness at edge" ["edge thickness"], Positive, Refused;
                    /// What it is made of.
                    material: Material = "material" [], Any, Refused;
                    /// Whether it was shown to be as strong and stiff as one of steel.
                    shown_stiff: YesNo = "shown stiff" ["proved stiff"], Any, Absent;
                    /// Run-out of its face on the running spindle, total reading.
                    run_out: Length = "run-out" ["face run-out", "runout"], ZeroOrMore, Zero;
                    /// Whether it is keyed to the hub, so that it can't turn the nut.
                    keyed: YesNo = "keyed" [], Any, Absent;
                    /// Hole of the flange itself.
                    hole: Length = "hole" ["bore"], Positive, Absent;
                    /// Modulus of elasticity of what it is made of.
                    modulus: Pressure = "modulus" ["modulus of elasticity"], Positive, Absent;
                    /// Poisson's ratio of what it is made of.
                    poisson_ratio: Ratio = "poisson ratio" ["poisson's ratio"], UnderHalf, Absent;
                }
                /// The blotter between the wheel and one flange.
                Blotter {
                    /// Whether there is one.
                    present: YesNo = "present" ["fitted"], Any, Refused;
                    /// Outside diameter.
                    diameter: Length = "diameter" ["dia", "od"], Positive, Absent;
                    /// Hole.
                    hole: Length = "hole" ["bore"], Positive, Absent;
                    /// Thickness.
                    thickness: Length = "thickness" [], ZeroOrMore, Zero;
                    /// Whether it was clamped before.
                    used_before: YesNo = "used before" ["reused", "used"], Any, Absent;
                    /// Whether the wheel's maker fixed it to the wheel.
                    fixed_by_maker: YesNo = "fixed by maker" ["factory fixed"], Any, Absent;
                    /// Least friction of flange and wheel through it.
                    friction: Ratio = "friction" ["least friction"], UpToOne, Absent;
                }
                /// The hub.
                Hub {
                    /// Diameter of the spigot that the wheel sits on.
                    spigot: Length = "spigot" ["spigot diameter", "pilot", "pilot diameter"], Positive, Refused;
                    /// Smallest spigot found in several directions.
                    smallest_spigot: Length = "smallest spigot" ["smallest pilot"], Positive, Absent;
                    /// Largest spigot found in several directions.
                    largest_spigot: Length = "largest spigot" ["largest pilot"], Positive, Absent;
                    /// Run-out of the spigot on the running spindle, total reading.
                    spigot_run_out: Length = "spigot run-out" ["pilot run-out", "spigot runout"], ZeroOrMore, Zero;
                    /// Run-out asked for, of spigot and flange face.
                    run_out_limit: Length = "run-out limit" ["runout limit"], Positive, Absent;
                    /// Greatest clearance asked for between hole and spigot, on diameter.
                    clearance_limit: Length = "clearance limit" [], Positive, Absent;
                    /// What the spigot is made of.
                    material: Material = "material" [], Any, Absent;
                    /// How much warmer than when measured the spigot gets.
                    warmer_by: TemperatureInterval = "warmer by" [], ZeroOrMore, Zero;
                    /// Thermal expansion of the spigot.
                    expansion: TemperatureCoefficient = "expansion" [], ZeroOrMore, Absent;
                    /// From the fixed flange's land to the first full thread.
                    thread_from: Length = "thread from" ["thread starts"], ZeroOrMore, Absent;
                    /// From the fixed flange's land to the end of the thread.
                    thread_to: Length = "thread to" ["thread ends"], Positive, Absent;
                    /// From the fixed flange's land to the shoulder that would stop the loose flange.
                    flange_stop: Length = "flange stop" ["shoulder"], ZeroOrMore, Zero;
                    /// Thickness of both stabiliser discs together.
                    stabilisers: Length = "stabilisers" ["stabilizers", "stabiliser thickness"], ZeroOrMore, Zero;
                    /// Diameter of the stabilisers.
                    stabiliser_diameter: Length = "stabiliser diameter" ["stabilizer diameter"], Positive, Absent;
                    /// Gap between its face and the spindle's shoulder, with its taper put on by hand.
                    stand_off: Length = "stand-off" ["standoff", "gap by hand"], ZeroOrMore, Absent;
                    /// How far the nut draws it up its taper.
                    draw_up: Length = "draw-up" ["drawup", "draw in"], ZeroOrMore, Absent;
                    /// Least gap to be left between its face and the shoulder when it is drawn up.
                    least_gap: Length = "least gap" ["gap to leave"], ZeroOrMore, Absent;
                    /// Bore inside the thread for the nut.
                    thread_bore: Length = "thread bore" ["bore under thread"], ZeroOrMore, Zero;
                    /// Width of the key slot through that thread.
                    thread_slot_width: Length = "thread slot width" ["thread keyway width"], ZeroOrMore, Zero;
                    /// Depth of that slot, from the crests of the thread.
                    thread_slot_depth: Length = "thread slot depth" ["thread keyway depth"], ZeroOrMore, Zero;
                    /// Proof stress of the thread for the nut.
                    thread_proof_stress: Pressure = "thread proof stress" [], Positive, Absent;
                    /// Mass of all that turns with it: wheel, flanges, hub, nut.
                    rotor_mass: Mass = "rotor mass" ["mass with wheel", "balanced mass"], Positive, Absent;
                    /// Balance quality grade asked for, such as G2.5.
                    balance_grade: BalanceGrade = "balance grade" ["grade of balance", "balance quality grade"], Positive, Absent;
                    /// Unbalance left after balancing, as measured.
                    residual_unbalance: Unbalance = "residual unbalance" ["unbalance left"], ZeroOrMore, Absent;
                    /// Unbalance of the bare hub: key slot, key, spanner holes, filler.
                    bare_unbalance: Unbalance = "bare unbalance" ["own unbalance"], ZeroOrMore, Zero;
                    /// Factor against slipping in the flanges asked for.
                    slip_factor: Ratio = "slip factor" ["factor against slipping"], OneOrMore, Absent;
                    /// Share of the torque that goes through the loose flange, where it is known: a half where both sides are alike.
                    loose_share: Ratio = "loose flange share" ["share through the loose flange"], UpToOne, Absent;
                }
                /// The nut.
                Nut {
                    /// Hand of its thread.
                    thread_hand: ThreadHand = "thread hand" ["thread", "hand"], Any, Refused;
                    /// Length of thread in it.
                    length: Length = "length" ["thread length"], Positive, Absent;
                    /// Major diameter of its thread.
                    thread_diameter: Length = "thread diameter" ["thread size"], Positive, Absent;
                    /// Pitch of its thread, which has one start and flanks at 60°.
                    thread_pitch: Length = "thread pitch" ["pitch"], Positive, Absent;
                    /// Torque it is tightened with.
                    tightening_torque: Torque = "tightening torque" ["torque"], Positive, Absent;
                    /// Least friction in its thread.
                    thread_friction: Ratio = "thread friction" ["least thread friction"], UpToOne, Absent;
                    /// Least friction under its face.
                    face_friction: Ratio = "face friction" ["least face friction"], UpToOne, Absent;
                    /// Outside diameter of the face it bears with.
                    face_diameter: Length = "face diameter" ["face outside"], Positive, Absent;
                    /// Inside diameter of that face.
                    face_hole: Length = "face hole" ["face inside"], Positive, Absent;
                    /// Its proof stress.
                    proof_stress: Pressure = "proof stress" [], Positive, Absent;
                    /// Greatest friction in its thread.
                    greatest_thread_friction: Ratio = "greatest thread friction" [], UpToOne, Absent;
                    /// Greatest friction under its face.
                    greatest_face_friction: Ratio = "greatest face friction" [], UpToOne, Absent;
                }
                /// The key between shaft and hub.
                Key {
                    /// Diameter of the shaft at the key.
                    shaft_diameter: Length = "shaft diameter" ["shaft", "shaft dia"], Positive, Absent;
                    /// Width it is listed by, which its limits go by.
                    nominal_width: Length = "nominal width" ["nominal size"], Positive, Absent;
                    /// Width, as measured.
                    width: Length = "width" [], Positive, Absent;
                    /// Height.
                    height: Length = "height" [], Positive, Absent;
                    /// Length that carries: inside the hub, without round ends.
                    length: Length = "length" ["carrying length"], Positive, Absent;
                    /// Height over which its side bears, where that is less than half of its height.
                    bearing_height: Length = "bearing height" [], Positive, Absent;
                    /// Width of the keyway in the shaft, as measured.
                    shaft_keyway: Length = "shaft keyway" ["keyway in shaft", "keyseat", "shaft keyway width"], Positive, Absent;
                    /// Width of the keyway in the hub, as measured.
                    hub_keyway: Length = "hub keyway" ["keyway in hub", "hub keyway width"], Positive, Absent;
                    /// Fit asked for.
                    fit: KeyFit = "fit" ["fit class"], Any, Absent;
                    /// Torque that it carries.
                    torque: Torque = "torque" [], Positive, Absent;
                    /// Shear stress allowed.
                    allowed_shear: Pressure = "allowed shear stress" ["allowed shear", "allowable shear stress"], Positive, Absent;
                    /// Bearing stress allowed, of the weakest of key, shaft and hub.
                    allowed_bearing: Pressure = "allowed bearing stress" ["allowed bearing", "allowable bearing stress", "allowed crushing stress"], Positive, Absent;
                }
                /// The taper of the spindle that the hub sits on, and how it is drawn up.
                Seat {
                    /// Length over which hub and taper engage.
                    length: Length = "length" ["engaged length"], Positive, Absent;
                    /// Diameter at the small end.
                    small_diameter: Length = "small diameter" ["small end", "small end diameter"], Positive, Absent;
                    /// Change of diameter over length: 0.2 for a taper of 1:5.
                    taper: Ratio = "taper" ["taper ratio"], UpToOne, Absent;
                    /// Half angle of the hub less that of the spindle: above zero the hub is too open.
                    mismatch: Angle = "mismatch" ["angle mismatch", "half angle mismatch"], Any, Absent;
                    /// Friction in it.
                    friction: Ratio = "friction" [], UpToOne, Absent;
                    /// Force with which the spindle's nut draws the hub up.
                    nut_force: Force = "nut force" ["draw force", "force"], Positive, Absent;
                    /// Outside diameter of the face by which that nut or its washer bears on the hub.
                    nut_diameter: Length = "nut diameter" ["nut face diameter"], Positive, Absent;
                    /// Outside diameter of the hub at the small end.
                    hub_diameter: Length = "hub diameter" ["hub outside diameter"], Positive, Absent;
                    /// Distance from the small end at which the hub's outside diameter changes.
                    step_from: Length = "step from" ["flange from"], Positive, Absent;
                    /// Outside diameter of the hub from there on.
                    step_diameter: Length = "step diameter" ["diameter from step"], Positive, Absent;
                    /// Bore of the spindle.
                    spindle_bore: Length = "spindle bore" [], ZeroOrMore, Zero;
                    /// How far the spindle reaches beyond the small end.
                    overhang_small: Length = "overhang at small end" [], ZeroOrMore, Zero;
                    /// How far the spindle reaches beyond the large end.
                    overhang_large: Length = "overhang at large end" [], ZeroOrMore, Zero;
                    /// Modulus of elasticity of the hub.
                    hub_modulus: Pressure = "hub modulus" ["hub elastic modulus"], Positive, Absent;
                    /// Poisson's ratio of the hub.
                    hub_poisson: Ratio = "hub poisson ratio" ["hub poisson's ratio"], UnderHalf, Absent;
                    /// Modulus of elasticity of the spindle.
                    spindle_modulus: Pressure = "spindle modulus" ["spindle elastic modulus"], Positive, Absent;
                    /// Poisson's ratio of the spindle.
                    spindle_poisson: Ratio = "spindle poisson ratio" ["spindle poisson's ratio"], UnderHalf, Absent;
                    /// Share of the length that is to carry.
                    share: Ratio = "share" ["share to carry", "contact share"], UpToOne, Absent;
                    /// Stress at which the hub yields.
                    hub_yield: Pressure = "hub yield" ["hub yield stress"], Positive, Absent;
                    /// Stress at which the spindle yields.
                    spindle_yield: Pressure = "spindle yield" ["spindle yield stress"], Positive, Absent;
                    /// Factor against yielding asked for.
                    yield_factor: Ratio = "yield factor" ["factor against yielding"], OneOrMore, Absent;
                    /// Whether there is a jacking thread or a puller for the hub.
                    puller: YesNo = "puller" ["jacking thread"], Any, Absent;
                    /// Force that the puller or the jacking screws give.
                    puller_force: Force = "puller force" ["jacking force"], Positive, Absent;
                }
            }
            places {
                machine: Machine = "machine" ["grinder"];
                spindle: Spindle = "spindle" [];
                wheel: Wheel = "wheel" [];
                fixed_flange: Flange = "fixed flange" ["inner flange", "back flange", "hub flange"];
                loose_flange: Flange = "loose flange" ["outer flange", "front flange"];
                fixed_blotter: Blotter = "fixed blotter" ["inner blotter", "back blotter"];
                loose_blotter: Blotter = "loose blotter" ["outer blotter", "front blotter"];
                hub: Hub = "hub" ["adapter", "adaptor", "sleeve", "arbor", "arbour"];
                nut: Nut = "nut" [];
                key: Key = "key" [];
                seat: Seat = "seat" [];
            }
        }
    };
}
pub(crate) use with_parts;
