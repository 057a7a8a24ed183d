-- The bunk cabin of the lakeside field station, described in the words of the trade.
-- Usage: lua5.4 bunk_cabin.lua FOLDER      writes FOLDER/index.html, cuts.csv and cuts.json

local frame = require "frame"

local cabin = frame.building{
  name = "Bunk cabin, lakeside field station",

  floors = {
    { name = "cabin floor", length_in = "20'", span_in = "11' 5\"", size = "2x10", species = "SPF", grade = "No.2",
      spacing_in = 16, live_psf = 40, dead_psf = 10, bearing_in = 3.5 },
  },

  -- 50 psf of snow on the ground: 0.7 of it lies on this roof (flat-roof factor, sheltered by nothing, unheated loft: both
  -- factors taken as 1), on plan.
  roofs = {
    { name = "cabin roof", length_in = "20'", run_in = "6'", slope = "7 in 12", overhang_in = 16,
      size = "2x8", species = "SPF", grade = "No.2", spacing_in = 16, ridge_size = "2x10", ridge_thickness_in = 1.5,
      dead_psf = 12, snow_psf = 35, roof_live_psf = 20 },
  },

  headers = {
    { name = "lake window header", opening_in = "6'", size = "2x10", plies = 2, species = "SPF", grade = "No.2",
      carries = "cabin roof", dead_plf = 20, bearing_in = 3 },
  },

  nailings = {
    { name = "rafter to ceiling joist", ties = "cabin roof", kind = "common nail", nail = "16d", count = 5, species = "SPF",
      load_duration_factor = 1.15 },
  },

  stock = {
    { size = "2x10", length_in = "12'", price = 21.40 }, { size = "2x10", length_in = "14'", price = 25.60 },
    { size = "2x10", length_in = "16'", price = 29.90 }, { size = "2x10", length_in = "20'", price = 39.80 },
    { size = "2x8", length_in = "8'", price = 10.20 },   { size = "2x8", length_in = "10'", price = 12.90 },
    { size = "2x8", length_in = "16'", price = 21.70 },  { size = "2x8", length_in = "20'", price = 29.10 },
  },
}

for check in cabin.checks() do
  print(string.format("%-26s %5.1f %%  %s, %s governs", check.name, 100 * check.ratio, check.passes and "passes" or "FAILS",
    check.governs))
end

print(string.format("%d members, %d boards for %.2f; weakest source: %s", cabin.member_total, cabin.boards_used, cabin.cost,
  cabin.known))

local folder = arg[1] or "."
os.execute('mkdir -p "' .. folder .. '"')
cabin:packet():write(folder)
