"""Sea water by the TEOS-10 library GSW, over a grid, for the command `referee` to hold Weirwise against.

Prints one line a point: quantity, practical salinity, temperature (ITS-90, degrees C), value.
  density   kg/m3 at one atmosphere, absolute salinity = reference salinity (35.16504/35 per practical salinity)
  oxygen    umol/kg, Garcia & Gordon 1992 as GSW has it
  gravity   specific gravity 25/25; Weirwise has to give back the salinity
"""
import gsw

SALT_PER_PRACTICAL = 35.16504 / 35


def density(practical_salinity, celsius):
    salt = practical_salinity * SALT_PER_PRACTICAL
    return gsw.rho(salt, gsw.CT_from_t(salt, celsius, 0), 0)


def main():
    for s in range(0, 43):
        for t in range(0, 41):
            print("density", s, t, repr(float(density(s, t))))
            print("oxygen", s, t, repr(float(gsw.O2sol_SP_pt(s, t))))
    for tenths in range(50, 421):
        s = tenths / 10
        print("gravity", s, 25, repr(float(density(s, 25) / density(0, 25))))


if __name__ == "__main__":
    main()
