"""`python -m co2vent.practice.prepare`: compile the model once, for all later runs."""

from co2vent.practice.live_section import prepare

if __name__ == "__main__":
    prepare()
