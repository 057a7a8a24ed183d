-- The Lua module as a hobbyist meets it: nothing global, results that read and print, errors that name the field.
local before = {}
for name in pairs(_G) do before[name] = true end
local frame = require "frame"
for name in pairs(_G) do assert(before[name], "the module set the global " .. name) end
for name in pairs(frame) do assert(not name:find "^swig" and not name:find "^frame_", name) end

local function refused(status, field, call, ...)
  local good, failure = pcall(call, ...)
  assert(not good, "was not refused")
  assert(type(failure) == "table" and failure.status == status, tostring(failure))
  assert(failure.field == field, ("field %s, not %s: %s"):format(failure.field, field, failure))
  assert(tostring(failure) == failure.text and failure.text:find(field, 1, true), failure.text)
  return failure
end

-- a result
local working = frame.working()
local two = frame.section { size = "2x10", plies = 2, working = working }
assert(two.area_in2 == 27.75 and two.known == "read")
assert(two == frame.section { size = "2 x 10", plies = 2.0 } and two ~= frame.section { size = "2x10" })
assert(tostring(two):find "27.75" and tostring(working):find "27.75")
local seen = {}
for name, value in pairs(two) do seen[name] = value end
assert(seen.area_in2 == 27.75 and two:to_table().area_in2 == 27.75)
assert(two.assumed[1]:find "^turned" and two.assumed_names[1] == "turned")
assert(frame.section { size = "2x6", plies = 2, turned = "flat" }:has_caution "flat_plies" and not two:has_caution "flat_plies")
assert(frame.section { "2x10", 2 } == two, "fields in order")
assert(frame.section { width_in = "1-1/2", depth_in = '9 1/4"' }.area_in2 == 1.5 * 9.25)
local joist = { use = "floor", size = "2x10", species = "DFL", grade = "No.2", spacing_in = 16, live_psf = 40, dead_psf = 10 }
joist.edition = 2021
local by_year = frame.code_joist_span(joist)
joist.edition = "2021"
assert(by_year == frame.code_joist_span(joist), "a year for an edition")
joist.overlay = frame.code_overlay("lookup,size,span_in,source\njoist_span,2x10,10',Ordinance 12\n")
local amended = frame.code_joist_span(joist)
joist.overlay = nil
collectgarbage()
assert(amended.span_in == 120 and amended.source == "Ordinance 12" and amended ~= by_year, "a handle in a field")
amended = nil

-- what is refused
refused("unknown field", "sise", frame.section, { sise = "2x10" })
assert(refused("unknown field", "widht_in", frame.section, { widht_in = 1 }).valid == "width_in")
refused("unknown name", "size", frame.section, { size = "2x11" })
refused("wrong type", "size", frame.section, { size = 10 })
refused("wrong type", "plies", frame.section, { size = "2x10", plies = "2" })
refused("wrong type", "plies", frame.section, { size = "2x10", plies = 1.5 })
refused("wrong type", "green", frame.section, { size = "2x10", green = 1 })
refused("out of range", "plies", frame.section, { size = "2x10", plies = 0 })
refused("not a number", "width_in", frame.section, { width_in = 0 / 0, depth_in = 3 })
refused("not a number", "width_in", frame.section, { width_in = math.huge, depth_in = 3 })
refused("out of range", "width_in", frame.section, { width_in = -1e300, depth_in = 3 })
refused("unreadable", "width_in", frame.section, { width_in = "wide", depth_in = 3 })
refused("wrong type", "section", frame.section, "2x10")
refused("wrong type", "working", frame.section, { size = "2x10", working = two })
refused("unknown field", "areain2", function() return two.areain2 end)
refused("unknown field", "rendr", function() return working:rendr() end)
refused("too large", "arguments", frame.section, { size = "2x10" }, {})
assert(not pcall(function() two.area_in2 = 1 end))

-- plain functions, words, help
assert(frame.tape_parse "7' 6\"" == 90 and frame.tape_format(94.77) == "7' 10-3/4\"")
assert(frame.tape_format(94.77, { style = "inches", denominator = 8 }) == '94-3/4"')
refused("wrong type", "inches", frame.tape_format, {})
assert(#frame.species() > 3 and #frame.words "turned" == 2)
assert(frame.help "section":find "section_modulus_in3" and not frame.help "section":find "FRAME_")
assert(frame.species_find "S-P-F" == "Spruce-Pine-Fir")

-- a student's answers
local marking = working:mark { S = 42.78125, A = 27 }
assert(marking.lines[1].symbol == "A" and marking.lines[1].verdict == "differs" and #marking.lines == 2)

-- answers, their lists, views
local plan = frame.stock_plan {
  pieces = { { "8' 9-1/8\"", 6, name = "rafter" }, { "22-1/2", 8, name = "block" } },
  stock = { { "8'", 7.1 }, { "12'", 10.9 }, { "16'", 15.4, 10 } },
}
local cut, boards = 0, 0
for board in plan.boards() do
  boards = boards + 1
  cut = cut + #board.pieces
  assert(board == plan.boards[boards])
end
assert(boards == #plan.boards and boards == plan.boards_used and cut == 14 and plan.boards[boards + 1] == nil)
for place, piece in ipairs(plan.pieces) do assert(piece.name == plan.pieces[place].name) end
assert(plan:to_table().boards[1].pieces[1].length_in == plan.pieces[1].length_in)
assert(tostring(plan):find "rafter")
local board = plan.boards[1]
plan = nil
collectgarbage()
assert(board.pieces[1].length_in > 0, "an item keeps its answer")
refused("out of range", "pieces[2].length_in", frame.stock_plan, { pieces = { { 10, 1 }, { -3, 1 } }, stock = { { 96, 7 } } })
refused("impossible", "pieces[1].length_in", frame.stock_plan, { pieces = { { 100, 1 } }, stock = { { 96, 7 } } })
assert(frame.layout_marks { length_in = "8'", spacing_in = 16 }.marks_in[2] == 15.25)

local rafter = frame.rafter { run_in = "6' 3-1/2\"", slope = "7 in 12", overhang_in = 14, depth_in = 5.5, seat_in = 3.5 }
local stick = rafter:stick()
local marks = 0
for mark in stick.marks() do marks = marks + (mark.along_in and 1) end
local plate = frame.stick{thickness_in = 3.5, depth_in = 1.5, start_x_in = 1.75, start_y_in = -30, start_z_in = -0.75,
                          end_x_in = 1.75, end_y_in = 30, end_z_in = -0.75}
local contact, touched = stick:contact(plate), 0
for face in contact.faces() do touched = touched + face.area_in2 end
assert(#contact.corners == 4 * #contact.faces and math.abs(touched - stick:fit(plate).contact_in2) < 1e-9)
assert(marks == #stick.marks and marks > 4 and math.abs(stick:lengths().top_edge_in - rafter.length_in) < 1e-9)
assert(rafter:drawing():svg():find "<svg")
local path = os.tmpname()
rafter:drawing():write_svg(path)
local file = io.open(path)
assert(file:read "a" == rafter:drawing():svg())
file:close()
os.remove(path)
refused("not written", "path", function() rafter:drawing():write_svg "/no/such/folder/rafter.svg" end)
local inside = coroutine.wrap(function() coroutine.yield(rafter.length_in) error(select(2, pcall(frame.section, {}))) end)
assert(inside() == rafter.length_in)
assert(select(2, pcall(inside)).status, "an error passes through a coroutine")

-- columns
refused("unknown name", "size[3]", frame.batch, "section", { size = { "2x4", "2x6", "9x9" } })
local all = frame.batch("section", { size = { "2x4", "2x6" }, plies = { 1, 2, 9 }, outer = true })
assert(#all == 6 and all.area_in2[2] == 10.5 and all.status[3] == "out of range" and all.area_in2[3] == false)
assert(all.assumed[1][1]:find "^turned")

-- a long search: watched, stopped, and an error of the function that watches
local pieces = {}
for i = 1, 200 do pieces[i] = { 200 + (i * i * 37 % 15000) / 100 + i / 4096, 1 } end
local function long(watch) return frame.stock_plan { pieces = pieces, stock = { { 1000, 1 } }, kerf_in = 0, watch = watch } end
local looks = 0
local stopped = long(function(best, bound) looks = looks + 1 return looks < 2 end)
assert(stopped.ended == "cancelled" and looks == 2 and stopped.cost >= stopped.bound)
local fine, why = pcall(long, function() error("enough", 0) end)
assert(not fine and why == "enough")
refused("wrong type", "watch", long, 7)
local room = frame.stock_room()
room:put { { length_in = "16'", price = 14, available = 1, size = "2x6" } }
room:take(frame.stock_plan { pieces = { { length_in = "8' 4\"", size = "2x6" } }, room = room, kept_offcut_in = 24 })
assert(room:csv():find("offcut,91.875,0,board,1,2x6", 1, true) and frame.stock_room_from_csv(room:csv()):json() == room:json())

-- memory: what was made is given back
collectgarbage()
collectgarbage()
local blocks = frame._live_blocks()
for _ = 1, 200 do
  frame.section { size = "2x10", working = frame.working() }
  pcall(frame.section, { size = "2x10", plies = 0 })
end
collectgarbage()
collectgarbage()
assert(frame._live_blocks() == blocks, "blocks left: " .. frame._live_blocks() - blocks)
