"""A section of pipe as it is vented: one physical model to simulate, rehearse and teach with."""
