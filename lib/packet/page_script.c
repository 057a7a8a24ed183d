/* What the page does by itself: finding by name, and tick boxes that stay ticked on the device. Without it all is there
 * to read. */
#include "packet/page.h"

const char frame_page_script[] =
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
    "if(field)field.addEventListener('input',look);\n"
    "})();\n";
