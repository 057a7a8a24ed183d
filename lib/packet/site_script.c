/* What the page does by itself: finding by name, and tick boxes that stay ticked on the device. Without it all is there
 * to read. */
#include "packet/framing.h"

const char frame_site_script[] =
    "(function(){\n"
    "var key='packet:'+document.title+':',store=null;\n"
    "try{store=window.localStorage;store.getItem(key)}catch(e){store=null}\n"
    "document.querySelectorAll('input[data-tick]').forEach(function(box){\n"
    "  var name=key+box.getAttribute('data-tick');\n"
    "  if(store&&store.getItem(name)==='1')box.checked=true;\n"
    "  box.addEventListener('change',function(){if(store){if(box.checked)store.setItem(name,'1');else "
    "store.removeItem(name)}});\n"
    "});\n"
    "var field=document.getElementById('find'),found=document.getElementById('found');\n"
    "function look(){\n"
    "  var words=field.value.toLowerCase().split(/\\s+/).filter(Boolean),count=0;\n"
    "  document.querySelectorAll('.find').forEach(function(item){\n"
    "    var text=item.textContent.toLowerCase();\n"
    "    var shown=words.every(function(w){return text.indexOf(w)>=0});\n"
    "    item.hidden=!shown;if(shown)count++;\n"
    "  });\n"
    "  found.textContent=words.length?count+' found':'';\n"
    "}\n"
    "field.addEventListener('input',look);\n"
    "})();\n";

const char frame_site_style[] =
    ".search{position:sticky;top:0;background:#fff;padding:.5rem 0;border-bottom:1px solid "
    "#999;display:flex;flex-wrap:wrap;"
    "gap:.3rem .8rem;align-items:center;z-index:1}\n"
    ".search input{font:inherit;padding:.3rem .5rem;border:2px solid #111;flex:1 1 12rem;min-width:0}\n"
    ".tick{display:inline-flex;gap:.5rem;align-items:center;font-weight:600}\n"
    ".tick input{width:1.4rem;height:1.4rem;flex:none}\n"
    ".bar{display:inline-block;width:6rem;height:.7rem;border:1px solid #111;vertical-align:middle;background:#fff}\n"
    ".bar i{display:block;height:100%;background:#111}\n"
    ".wide-table{overflow-x:auto}\n"
    "[hidden]{display:none!important}\n"
    "input:focus-visible{outline:3px solid #111}\n"
    "@media print{.search{display:none}.check details{display:none}}\n";
