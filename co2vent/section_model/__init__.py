"""A section of pipe as it is vented: one physical model to simulate, rehearse and teach with.

    run = SectionRun(setting, seed=3)          # simulation.py; `Setting` in parameters.py
    rows = run.step(valve=1.0, readings=60)    # columns as layout.OUTPUT
    case = draw_case(7); run_case(case)        # population.py: random vents with their truth

Numba is loaded when a run starts, not before. SI, absolute. Symbols: m mass, U internal energy,
T temperature, p pressure, h enthalpy; g gas, c condensed CO2 of a pocket, w wet metal of a pocket,
d dry metal.

What is conserved is stepped; the rest follows (settling.py)
    State: m_g, U_g of the gas space (CO2, nitrogen, steam; one temperature, ideal mixing), m_c, U_c
    and T_w of each pocket, T_d. Volume: V_g = V - sum m_c/rho_c. T_g from U_g; p = p_CO2(m_g/V_g,
    T_g) + sum m R T_g / V_g of the others. Condensed CO2 is saturated: T_c from u = U_c/m_c; with
    u between liquid and dry ice at the triple point it is a mixture of both at 216.592 K, dry-ice
    share (u_l - u)/(u_l - u_s). So at constant p and V venting turns h_fg/(h_fg + h_fus) = 0.635
    of the liquid into dry ice without being told to, and melting pins p on the way up.
    Liquid-full: less than 1e-3 V of gas; p along the isochore p_sat(T_f) + (dp/dT)_rho (T - T_f),
    T_f where that density is saturated. Every flow takes kg and J from one node and gives them to
    another (also p dV between gas and condensed), so balances close to rounding.

Evaporation is kinetic (exchange.py)
    dm/dt = (m c/tau + 20 hA)(T_c - T_sat(p))/h_fg for superheated liquid (tau 0.1 to 1.5 s) or dry
    ice (seconds); solved implicitly with T_c and T_sat(p + dp/dm dm). Condensation on the colder
    surface: h A (T_sat - T_c)/h_fg, on colder metal likewise; supersaturated gas forms mist.

Heat (exchange.py, packing.py)
    Gas on metal Nu = 0.13 Ra^(1/3) (turbulent free convection; the length drops out); boiling
    liquid on metal 150 to 1500 W/m2K, dry ice on metal far less; wetted share of a horizontal
    cylinder at its level; metal along the circumference k A/L; outside one conductance per area.
    CO2 evaporating at the wall is given no credit for stirring the gas.

Flow out and in (flows.py)
    Vapour: ISO 9300 / API 520 form with the ideal gas's k and the real inlet density, choked or
    not; valve and hose in a row A = ab/sqrt(a2 + b2). Liquid: sqrt(2 rho (p - p_sat) + G_ERM^2),
    G_ERM = T dp/dT sqrt(1/(T c)) (equilibrium rate model). A high, swelling level is carried over.
    Liquid passing the hose leaves a share of its snow there; 573 kJ/kg clear it. Leak-by: the given
    flow while choked, none at the supply pressure, flashed at the section's pressure.

Slow sources (sorption.py)
    Oil by Raoult's law, desiccant by Langmuir, both first order in time; water towards saturation.

Properties (fluid.py) are tables of `co2vent.co2`, errors under 1e-5. The gas may be another one.

Not in the model: layers of warm and cold gas, liquid subcooled below its surface (one temperature
a pocket), pressure drop inside the section, stretch of the pipe, freezing of liquid above the
triple pressure, dry ice leaving with the gas, air drawn in. Heat-transfer coefficients are draws
from ranges, not measurements; no vent of a real section was available to compare with, only
tables, an independent integration and a nitrogen blowdown (see tests/section_model).
"""
