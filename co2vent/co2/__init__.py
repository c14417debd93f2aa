"""CO2 state: saturation and sublimation lines, densities, enthalpies, vapour; SI, absolute."""
