-- A shed roof for the boathouse's wood store: one rafter, how many, what to buy, a drawing.
local frame = require "frame"

local length, spacing = "12'", 24
local rafter = frame.rafter{ run_in = "7' 2\"", slope = "3 in 12", ledger_thickness_in = 1.5, overhang_in = 12, depth_in = 5.5, seat_in = 3.5,
                             name = "wood store rafter" }
print("line length ", frame.tape_format(rafter.line_length_in))
print("plumb cut   ", string.format("%.2f degrees", rafter.plumb_cut_deg))
print("notch       ", frame.tape_format(rafter.notch_depth_in), "deep, seat", frame.tape_format(rafter.seat_in))

local hold = frame.joist_check{ use = "rafter", size = "2x6", species = "SPF", grade = "No.2", span_in = rafter.line_length_in,
                                spacing_in = spacing, snow_psf = 40, dead_psf = 10 }
print("holds       ", hold.passes, string.format("ratio %.2f, %s governs", hold.ratio, hold.governs))

local marks = frame.layout_marks{ length_in = length, spacing_in = spacing }
print("rafters     ", #marks.marks_in)

local plan = frame.stock_plan{
  pieces = { { rafter.stock_length_in, #marks.marks_in, name = "rafter" } },
  stock = { { "8'", 6.20 }, { "10'", 7.90 }, { "16'", 12.10 } },
}
print("boards      ", #plan.boards, string.format("%.2f", plan.cost), plan.optimal and "proved least" or "not proved")
for _, caution in ipairs(rafter.cautions) do print("mind:", caution) end
if arg and arg[1] then rafter:drawing():write_svg(arg[1]) end
